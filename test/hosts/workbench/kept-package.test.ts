import type ExcelJS from "exceljs";
import { catalogue } from "../../../src/functions";
import type { SheetCell } from "../../../src/hosts/engine/book";
import { sayCellOf } from "../../../src/hosts/engine/place";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { changedSince } from "../../../src/hosts/workbench/page/kept-file";
import { readByExceljs } from "../../support/read-by-exceljs";
import { surprises } from "../engine/compare-packages";
import { bytesOf, corpusWorkbooks, notByExceljs } from "../engine/corpus-workbooks";
import { differing } from "./differing";
import { type GridInNode, gridInNode } from "./grid-in-node";

/** The first sheet and a number that is typed on it, in no answer of a formula. */
const numberIn = ({ opened }: GridInNode): { sheet: string; cell: SheetCell; address: string } => {
  const sheet = opened.book.sheets[0];
  const cell = sheet?.cells.find(
    ({ value, formula, row }) => typeof value === "number" && formula === undefined && row > 0,
  );
  if (!sheet || !cell) throw new Error("The sheet has no number.");
  return { sheet: sheet.name, cell, address: sayCellOf(cell) };
};

let grid: GridInNode;
afterEach(() => grid.close());
const sheetOf = (sheet: string) => {
  const found = grid.api.getActiveWorkbook()?.getSheetByName(sheet);
  if (!found) throw new Error("There is no such sheet.");
  return found;
};

describe.each(corpusWorkbooks)("%s", (name) => {
  const bytes = bytesOf(name);
  beforeEach(async () => {
    grid = await gridInNode(bytes);
  });

  test("saved without a change, differs in the values of recalculated cells only", () => {
    const { edits, kept } = changedSince(grid.opened.book, grid.state());
    expect(edits.added).toEqual([]);
    expect(edits.sheets).toEqual(grid.opened.book.sheets.map(() => ({ cells: [] })));
    const { bytes: after, how } = grid.saved();
    expect(how).toEqual({ moved: [] });
    expect(surprises(bytes, after, kept)).toEqual([]);
  });

  test("with another number typed, that cell differs too, and nothing else", async () => {
    const { sheet, cell, address } = numberIn(grid);
    sheetOf(sheet).getRange(cell.row, cell.column).setValue(0.0625);
    await grid.settle();
    const { bytes: after, how } = grid.saved();
    expect(how).toEqual({ moved: [] });
    const { kept } = changedSince(grid.opened.book, grid.state());
    expect(surprises(bytes, after, kept)).toEqual([
      expect.stringMatching(new RegExp(`: ${address} is not calculated: .* → <c[^>]*><v>0.0625</v></c>$`)),
    ]);
    const { book } = openWorkbook(after, catalogue);
    const read = book.sheets[0]?.cells.find(({ row, column }) => row === cell.row && column === cell.column);
    expect(read?.value).toBe(0.0625);
    const stumble = notByExceljs[name];
    if (stumble) await expect(readByExceljs(bytes)).rejects.toThrow(stumble);
    else expect((await readByExceljs(after)).getWorksheet(sheet)?.getCell(address).value).toBe(0.0625);
  });
});

describe.each(corpusWorkbooks.filter((name) => !(name in notByExceljs)))("%s, read by exceljs", (name) => {
  const bytes = bytesOf(name);
  beforeEach(async () => {
    grid = await gridInNode(bytes);
  });

  test("with a formula of ours typed over one that was there, it is stored as spreadsheets bind it", async () => {
    const sheet = grid.opened.book.sheets.find(({ cells }) => cells.some(({ formula }) => formula !== undefined));
    const cell = sheet?.cells.find(({ formula, stored }) => formula !== undefined && stored === "single");
    if (!sheet || !cell) throw new Error("There is no formula.");
    sheetOf(sheet.name).getRange(cell.row, cell.column).setFormula("=BIMETAL.CONTACT.WATTS(7,0.5)");
    await grid.settle();
    const { bytes: after, how } = grid.saved();
    expect(how).toEqual({ moved: [] });
    const read = (await readByExceljs(after)).getWorksheet(sheet.name)?.getCell(sayCellOf(cell));
    // 7 A x 0.5 V, by hand.
    expect(read?.value).toMatchObject({
      formula: "_xldudf_BIMETAL_CONTACT_WATTS(7,0.5)",
      shareType: "array",
      result: 3.5,
    });
    const others = differing(bytes, after).filter((part) => !/^xl\/worksheets\/[^/]*\.xml$/.test(part));
    for (const part of others)
      expect(part).toMatch(
        /^(\[Content_Types\]\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/metadata\.xml|xl\/calcChain\.xml)$/,
      );
    const again = openWorkbook(after, catalogue);
    const stored = again.book.sheets.find(({ name }) => name === sheet.name)?.cells;
    expect(stored?.find(({ row, column }) => row === cell.row && column === cell.column)).toMatchObject({
      formula: "=BIMETAL.CONTACT.WATTS(7,0.5)",
      value: 3.5,
      spill: { rows: 1, columns: 1 },
    });
    // Every other formula is what it was, those that were written together with it too.
    const formulas = (cells: readonly SheetCell[] = []) =>
      cells.flatMap((one) =>
        one.formula && sayCellOf(one) !== sayCellOf(cell) ? [`${sayCellOf(one)} ${one.formula}`] : [],
      );
    expect(formulas(stored)).toEqual(formulas(sheet.cells));
  });

  test("with a cell in bold and a wider column, its borders, font and format are what they were", async () => {
    const { sheet, cell, address } = numberIn(grid);
    sheetOf(sheet).getRange(cell.row, cell.column).setFontWeight("bold");
    sheetOf(sheet).getRange(cell.row, cell.column).setBackgroundColor("#FFEE00");
    sheetOf(sheet).setColumnWidth(cell.column, 145);
    await grid.settle();
    const { bytes: after, how } = grid.saved();
    expect(how).toEqual({ moved: [] });
    const [old, now] = (await Promise.all([readByExceljs(bytes), readByExceljs(after)])).map((book) =>
      book.getWorksheet(sheet),
    );
    const [was, is] = [old?.getCell(address), now?.getCell(address)];
    expect(is?.font).toMatchObject({ ...was?.font, bold: true });
    expect(is?.fill).toMatchObject({ pattern: "solid", fgColor: { argb: "FFFFEE00" } });
    const kept = (one: ExcelJS.Cell | undefined) => [one?.numFmt ?? "General", one?.border ?? {}, one?.protection];
    expect(kept(is)).toEqual(kept(was));
    expect(now?.getColumn(cell.column + 1).width).toBe(20);
    const styleOf = (from: ExcelJS.Worksheet | undefined) => {
      const found: unknown[] = [];
      from?.eachRow((row) =>
        row.eachCell((one) => {
          if (one.address !== address && Object.keys(one.style).length > 0) found.push([one.address, one.style]);
        }),
      );
      return found;
    };
    expect(styleOf(now)).toEqual(styleOf(old));
    const others = Array.from({ length: 20 }, (_, i) => i + 1).filter((number) => number !== cell.column + 1);
    const widths = (from: ExcelJS.Worksheet | undefined) => others.map((number) => from?.getColumn(number).width);
    expect(widths(now)).toEqual(widths(old));
    const changed = differing(bytes, after).filter((part) => !/^xl\/worksheets\/[^/]*\.xml$/.test(part));
    for (const part of changed)
      expect(part).toMatch(
        /^(xl\/styles\.xml|\[Content_Types\]\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/metadata\.xml|xl\/calcChain\.xml)$/,
      );
    expect(changed).toContain("xl/styles.xml");
  });

  test("with one more sheet, the others keep their bytes but for calculated values", async () => {
    const workbook = grid.api.getActiveWorkbook();
    const fresh = workbook?.create("Fernhollow & notes", 50, 10);
    fresh?.getRange(0, 0).setValue("bench <2>");
    fresh?.getRange(1, 1).setFormula('=BIMETAL.TRIP.RANGE(51,20,"C")');
    await grid.settle();
    const { bytes: after, how } = grid.saved();
    expect(how).toEqual({ moved: [] });
    const { kept } = changedSince(grid.opened.book, grid.state());
    const surprise = surprises(bytes, after, kept).map((one) => one.replace(/ differs.*/, ""));
    const known =
      /^(\[Content_Types\]\.xml|xl\/(_rels\/)?workbook\.xml(\.rels)?|xl\/worksheets\/sheet\d+\.xml|xl\/metadata\.xml|xl\/calcChain\.xml)$/;
    for (const one of surprise) expect(one).toMatch(known);
    const read = await readByExceljs(after);
    const names = (await readByExceljs(bytes)).worksheets.map((sheet) => sheet.name);
    expect(read.worksheets.map((sheet) => sheet.name)).toEqual([...names, "Fernhollow & notes"]);
    const added = read.getWorksheet("Fernhollow & notes");
    expect(added?.getCell("A1").value).toBe("bench <2>");
    // IEC 60898-1 Table 7, test c, at 30 degrees: 51 A / 20 A = 2.55, from 1 s to 60 s.
    expect(added?.getCell("B2").value).toMatchObject({ shareType: "array", ref: "B2:C2", result: 1 });
    expect(added?.getCell("C2").value).toBe(60);
  });
});
