import { CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { writeWorkbook } from "../../../src/hosts/engine/xlsx/write-workbook";
import { cellsFrom } from "../engine/cells-from";
import { partsOf, sheetAround, workbookAround } from "../engine/packages";
import { type GridInNode, gridInNode } from "./grid-in-node";

// When the package can be kept, and what is said when it cannot: what was moved in the grid and not taken back.

const bytes = writeWorkbook(
  {
    sheets: [
      {
        name: "Log",
        cells: cellsFrom([
          ["current", "drop"],
          [51, 0.2],
          [36, 0.3],
          [30, 0.1],
        ]),
        tables: [{ name: "Trials", block: { row: 0, column: 0, rows: 4, columns: 2 }, columns: ["current", "drop"] }],
      },
      { name: "Other", cells: cellsFrom([["=Log!A2", "=SUM(Trials[drop])"]]) },
    ],
    names: [{ name: "Rated", formula: "Log!$A$2" }],
  },
  catalogue,
);

let grid: GridInNode;
beforeEach(async () => {
  grid = await gridInNode(bytes);
});
afterEach(() => grid.close());

const workbook = () => {
  const open = grid.api.getActiveWorkbook();
  if (!open) throw new Error("No workbook is open.");
  return open;
};
const log = () => {
  const sheet = workbook().getSheetByName("Log");
  if (!sheet) throw new Error("There is no such sheet.");
  return sheet;
};
const how = () => grid.saved().how;
const kept = { moved: [] };

const moved = { anew: "rows or columns of the sheet Log were put in, taken out or moved" };

test.each<[string, () => unknown]>([
  ["a row is put in", () => log().insertRows(1, 1)],
  ["a row is taken out", () => log().deleteRows(2, 1)],
  ["a column is put in", () => log().insertColumns(1, 1)],
  ["a column is taken out", () => log().deleteColumns(1, 1)],
  ["rows change places", () => log().moveRows(log().getRange("A2:B2"), 4)],
])("when %s the package is not kept, until that is taken back", async (_, act) => {
  await act();
  expect(how()).toEqual(moved);
  await workbook().undo();
  expect(how()).toEqual(kept);
  await workbook().redo();
  expect(how()).toEqual(moved);
});

test("a row put in where one was taken out does not bring the old one back", () => {
  log().deleteRows(2, 1);
  log().insertRows(2, 1);
  expect(how()).toEqual(moved);
});

test("more rows behind the last are no matter", async () => {
  log().insertRows(log().getMaxRows(), 5);
  expect(how()).toEqual(kept);
  await workbook().undo();
  expect(how()).toEqual(kept);
});

test("a sheet that is deleted and brought back keeps its place; one that is renamed keeps it under its old name", async () => {
  const other = workbook().getSheetByName("Other");
  if (other) workbook().deleteSheet(other);
  expect(how()).toEqual({ anew: "the sheet Other was deleted" });
  await workbook().undo();
  expect(how()).toEqual(kept);
  log().setName("Trials");
  expect(how()).toMatchObject({ anew: "the sheet Log was renamed" });
});

test("a heading of a table is its name in the file, so it cannot change there alone", async () => {
  log().getRange(0, 1).setValue("loss");
  expect(how()).toEqual({ anew: "a heading of the table Trials was changed" });
  log().getRange(0, 1).setValue("drop");
  expect(how()).toEqual(kept);
});

test("rows put in on a sheet that is new are no matter to the file", () => {
  const fresh = workbook().create("Fresh", 20, 5);
  fresh.getRange(0, 0).setValue("typed");
  fresh.insertRows(0, 2);
  const { bytes: after } = grid.saved();
  expect(openWorkbook(after, catalogue).book.sheets.at(-1)).toMatchObject({
    name: "Fresh",
    cells: [{ row: 2, column: 0, value: "typed" }],
  });
});

test("an array of the old kind that is broken into finds no room, as in the grid; taken back, it is what it was", async () => {
  grid.close();
  const array =
    '<row r="1"><c r="A1"><v>1</v></c><c r="C1"><f t="array" ref="C1:C3">A1:A3*2</f><v>2</v></c></row>' +
    '<row r="2"><c r="A2"><v>2</v></c><c r="C2"><v>4</v></c></row><row r="3"><c r="A3"><v>3</v></c><c r="C3"><v>6</v></c></row>';
  grid = await gridInNode(workbookAround(sheetAround(array)));
  log().getRange(1, 2).setValue("typed");
  await grid.settle();
  const { cells } = openWorkbook(grid.saved().bytes, catalogue).book.sheets[0] ?? { cells: [] };
  const at = (row: number) => cells.find((cell) => cell.row === row && cell.column === 2);
  expect(at(0)).toMatchObject({ formula: "=A1:A3*2", value: new CellError("#VALUE!"), spill: { rows: 1, columns: 1 } });
  expect(at(0)?.stored).toBeUndefined();
  expect([at(1)?.value, at(2)?.value]).toEqual(["typed", undefined]);
  await workbook().undo();
  await grid.settle();
  expect(partsOf(grid.saved().bytes).get("xl/worksheets/sheet1.xml")).toBe(sheetAround(array));
});

test("what a formula filled goes with it", async () => {
  const sheet = workbook().getSheetByName("Other");
  sheet?.getRange(4, 0).setFormula("=Log!A2:B4*1");
  await grid.settle();
  const first = grid.saved().bytes;
  grid.close();
  grid = await gridInNode(first);
  workbook().getSheetByName("Other")?.getRange(4, 0).setValue("gone");
  await grid.settle();
  const { cells } = openWorkbook(grid.saved().bytes, catalogue).book.sheets[1] ?? { cells: [] };
  expect(cells.filter(({ row }) => row >= 4)).toEqual([{ row: 4, column: 0, value: "gone" }]);
});

test("cells that are moved are where they went; the file's charts and rules are not asked to follow, and that is told", async () => {
  const range = (row: number) => ({ startRow: row, endRow: row, startColumn: 1, endColumn: 1 });
  await grid.api.executeCommand("sheet.command.move-range", { fromRange: range(3), toRange: range(6) });
  const { bytes: after, how } = grid.saved();
  expect(how).toEqual({ moved: ["Log"] });
  const { cells } = openWorkbook(after, catalogue).book.sheets[0] ?? { cells: [] };
  const at = (row: number) => cells.find((cell) => cell.row === row && cell.column === 1)?.value;
  expect([at(3), at(6)]).toEqual([undefined, 0.1]);
  await workbook().undo();
  expect(grid.saved().how).toEqual(kept);
});

test("a name follows cells that are moved, which the file's own does not", async () => {
  const range = (row: number) => ({ startRow: row, endRow: row, startColumn: 0, endColumn: 0 });
  await grid.api.executeCommand("sheet.command.move-range", { fromRange: range(1), toRange: range(8) });
  expect(how()).toEqual({ anew: "its names stand for other cells than they did" });
});

test("written anew without its table, a workbook has no formula that asks for it by name", async () => {
  log().insertRows(2, 1);
  await grid.settle();
  const { bytes: after, how } = grid.saved();
  expect(how).toEqual(moved);
  const { sheets } = openWorkbook(after, catalogue).book;
  expect(sheets.flatMap(({ tables = [] }) => tables)).toEqual([]);
  // 0.2 + 0.3 + 0.1, by hand.
  expect(sheets[1]?.cells[1]).toMatchObject({ formula: "=SUM(Log!$B$2:$B$5)", value: expect.closeTo(0.6, 12) });
});

test("a text of two lines, which the engine keeps as a document, is a text in the file", async () => {
  const body = { dataStream: "held\rat 21 A\r\n", textRuns: [], paragraphs: [{ startIndex: 4 }, { startIndex: 12 }] };
  log()
    .getRange(4, 3)
    .setValue({ v: null, p: { id: "d", documentStyle: {}, body } });
  const { cells } = openWorkbook(grid.saved().bytes, catalogue).book.sheets[0] ?? { cells: [] };
  expect(cells.find(({ row }) => row === 4)?.value).toBe("held\nat 21 A");
});
