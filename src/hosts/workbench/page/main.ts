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
import { listenToKeys } from "./keys";
import { guessNothing } from "./no-guessing";
import { OpenBook } from "./open-book";
import { fetchOpened, onFileChosen, onFileDropped } from "./opened-file";
import { pasteInto } from "./paste-into";
import { progress } from "./progress";
import { stepThroughRegions } from "./regions";
import { showSheets } from "./sheet-tabs";
import { startGrid } from "./start-grid";
import { showTips } from "./tips";
import { offerWords } from "./words-offered";

const memory = new Memory();
const container = element("grid", HTMLDivElement);
const line = element("formula", HTMLInputElement);
const pane = element("pane", HTMLElement);
const opens = element("open", HTMLElement);

listenToKeys(() => book, {
  open: () => opens.click(),
  save: () => files.save(),
  chooseWord: () => chooseWord(),
});
const grid = startGrid(container, catalogue, memory, {
  onDefect: ({ thrown }) => console.error(thrown),
  isRefusal: ({ subUnitId, row, col }) => {
    const sheet = grid.api.getActiveWorkbook()?.getSheetBySheetId(subUnitId)?.getSheetName();
    return sheet !== undefined && book.view?.messageAt({ sheet, row, column: col }) !== undefined;
  },
  onPaste: (rows) => pasteInto(book, rows, catalogue),
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
const chooseWord = offerWords(element("words", HTMLSelectElement), book, catalogue);
showTips(container, book);
stepThroughRegions([gridEditor, () => line, () => document.querySelector(".shop-sheet[aria-current]"), () => pane]);
mountPane(pane, gridPort(book, memory, catalogue), catalogue);

const files = new Files(book, catalogue, progress(element("file", HTMLElement)));
onFileChosen(opens, element("chosen", HTMLInputElement), (file) => files.openInstead(file));
onFileDropped(document.body, (file) => files.openInstead(file));
element("save", HTMLElement).addEventListener("click", () => files.save());
// The browser asks before it leaves.
window.addEventListener("beforeunload", (event) => book.isChanged && event.preventDefault());
// The engine has no cells to type into before the first workbook is there.
void files.open(fetchOpened()).then(() => guessNothing(grid.univer));
