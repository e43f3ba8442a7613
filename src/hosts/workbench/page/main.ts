import { Memory } from "../../../definition/memory";
import { catalogue } from "../../../functions";
import { cellsFrom } from "../../engine/book";
import { mountPane } from "../../pane/mount";
import { announceCell } from "./announcer";
import { Completion } from "./completion";
import { element } from "./element";
import { gridEditor } from "./focus-grid";
import { followScheme } from "./follow-scheme";
import { showFormulaLine } from "./formula-line";
import { gridPort } from "./grid-port";
import { OpenBook } from "./open-book";
import { showRefusalTips } from "./refusal-tip";
import { stepThroughRegions } from "./regions";
import { showSheets } from "./sheet-tabs";
import { startGrid } from "./start-grid";

const memory = new Memory();
const container = element("grid", HTMLDivElement);
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
const line = element("formula", HTMLInputElement);
showFormulaLine(book, {
  address: element("address", HTMLElement),
  line,
  note: element("note", HTMLElement),
  completion: new Completion(line, element("options", HTMLElement), element("help", HTMLElement), catalogue),
});
announceCell(element("said", HTMLElement), book);
showRefusalTips(container, book);
stepThroughRegions([
  gridEditor,
  () => line,
  () => document.querySelector<HTMLElement>(".shop-sheet[aria-current]"),
  () => element("pane", HTMLElement),
]);
mountPane(element("pane", HTMLElement), gridPort(book, memory), catalogue);
(window as any).book = book;
await book.open({
  sheets: [
    {
      name: "Log",
      cells: cellsFrom([
        ["current", "drop", "heat"],
        [20, 0.16, "=BIMETAL.CONTACT.WATTS(A2:A4,B2:B4)"],
        [30, 0.2],
        ["x", 0.1],
      ]),
    },
  ],
});
