import { Memory } from "../../../definition/memory";
import { catalogue } from "../../../functions";
import { readWorkbook } from "../../engine/xlsx/open-workbook";
import { mountPane } from "../../pane/mount";
import { announceCell } from "./announcer";
import { Completion } from "./completion";
import { element } from "./element";
import { firstAnswer } from "./first-answer";
import { gridEditor } from "./focus-grid";
import { followScheme } from "./follow-scheme";
import { showFormulaLine } from "./formula-line";
import { goTo } from "./go-to";
import { gridPort } from "./grid-port";
import { OpenBook } from "./open-book";
import { fetchOpened, type OpenedFile, onFileChosen } from "./opened-file";
import { progress } from "./progress";
import { showRefusalTips } from "./refusal-tip";
import { stepThroughRegions } from "./regions";
import { showSheets } from "./sheet-tabs";
import { showWorkbook } from "./show-workbook";
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
showSheets(element("sheets", HTMLElement), book);
showFormulaLine(book, {
  address: element("address", HTMLElement),
  line,
  note: element("note", HTMLElement),
  completion: new Completion(line, element("options", HTMLElement), element("help", HTMLElement), catalogue),
});
announceCell(element("said", HTMLElement), book);
showRefusalTips(container, book);
stepThroughRegions([gridEditor, () => line, () => document.querySelector(".shop-sheet[aria-current]"), () => pane]);
mountPane(pane, gridPort(book, memory), catalogue);

const say = progress(element("file", HTMLElement));
const show = async (fetching: OpenedFile | Promise<OpenedFile>): Promise<void> => {
  try {
    await say("Opening …");
    const { name, bytes } = await fetching;
    await say(`Calculating ${name} …`);
    const kept = await showWorkbook(book, readWorkbook(bytes, catalogue), catalogue);
    // A newcomer sees an answer and its explanation at once.
    const first = book.book && firstAnswer(book.book);
    if (first) goTo(book, first);
    document.title = `${name} – Bimetal workbench`;
    await say(
      kept.length === 0 ? name : `${name}: ${kept.length} formulas keep the values they had, first ${kept[0]?.why}`,
    );
  } catch (reason) {
    await say(reason instanceof Error ? reason.message : String(reason));
  }
};
onFileChosen(element("open", HTMLElement), element("chosen", HTMLInputElement), show);
void show(fetchOpened());
