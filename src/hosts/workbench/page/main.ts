import { Memory } from "../../../definition/memory";
import { catalogue } from "../../../functions";
import { mountPane } from "../../pane/mount";
import { announceCell } from "./announcer";
import { tellCalculations } from "./calculating";
import { Completion } from "./completion";
import { element } from "./element";
import { Files } from "./files";
import { gridEditor } from "./focus-grid";
import { followScheme } from "./follow-scheme";
import { showFormulaLine } from "./formula-line";
import { gridPort } from "./grid-port";
import { OpenBook } from "./open-book";
import { fetchOpened, onFileChosen } from "./opened-file";
import { progress } from "./progress";
import { showRefusalTips } from "./refusal-tip";
import { stepThroughRegions } from "./regions";
import { showSheets } from "./sheet-tabs";
import { startGrid } from "./start-grid";

const memory = new Memory();
const container = element("grid", HTMLDivElement);
const line = element("formula", HTMLInputElement);
const pane = element("pane", HTMLElement);

const grid = startGrid(container, catalogue, memory, {
  onDefect: ({ thrown }) => console.error(thrown),
  isRefusal: ({ subUnitId, row, col }) => {
    const sheet = grid.api.getActiveWorkbook()?.getSheetBySheetId(subUnitId)?.getSheetName();
    return sheet !== undefined && book.view?.messageAt({ sheet, row, column: col }) !== undefined;
  },
});
const book = new OpenBook(grid);

followScheme(grid);
tellCalculations(grid, { said: element("busy", HTMLElement), bar: element("busy-bar", HTMLProgressElement) });
showSheets({ place: element("sheets", HTMLElement), said: element("sheets-said", HTMLElement) }, book);
showFormulaLine(book, {
  address: element("address", HTMLElement),
  line,
  note: element("note", HTMLElement),
  completion: new Completion(line, element("options", HTMLElement), element("help", HTMLElement), catalogue),
});
announceCell(element("said", HTMLElement), book);
showRefusalTips(container, book);
stepThroughRegions([gridEditor, () => line, () => document.querySelector(".shop-sheet[aria-current]"), () => pane]);
mountPane(pane, gridPort(book, memory, catalogue), catalogue);

const files = new Files(book, catalogue, progress(element("file", HTMLElement)));
onFileChosen(element("open", HTMLElement), element("chosen", HTMLInputElement), (file) => files.open(file));
element("save", HTMLElement).addEventListener("click", () => files.save());
void files.open(fetchOpened());
