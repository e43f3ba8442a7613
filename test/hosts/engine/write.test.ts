import { catalogue } from "../../../src/functions";
import type { Book } from "../../../src/hosts/engine/book";
import { calculate } from "../../../src/hosts/engine/calculate";
import { withValues } from "../../../src/hosts/engine/with-values";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { writeWorkbook } from "../../../src/hosts/engine/xlsx/write-workbook";
import { readByExceljs } from "../../support/read-by-exceljs";
import { cellsFrom } from "./cells-from";
import { partsOf } from "./packages";

const book: Book = {
  names: [{ name: "Rated", formula: "'Bench log'!$A$2" }],
  sheets: [
    {
      name: "Bench log",
      frozen: { rows: 1, columns: 0 },
      widths: new Map([
        [0, 14],
        [2, 20],
      ]),
      tables: [{ name: "Trials", block: { row: 0, column: 0, rows: 4, columns: 2 }, columns: ["current", "drop"] }],
      choices: [{ block: { row: 1, column: 6, rows: 3, columns: 1 }, words: ["held", "tripped"] }],
      cells: [
        ...cellsFrom([["current", "drop", "watts"]], {
          style: { bold: true, fill: "DDEEFF", color: "102030", wrap: true },
        }),
        ...cellsFrom(
          [
            [20, 0.16],
            [10, 0.2],
            [-5, 0.1],
          ],
          { row: 1, style: { format: '0.00 "A"' } },
        ),
        ...cellsFrom([["=BIMETAL.CONTACT.WATTS(A2:A4,B2:B4)", "=SUM(Trials[current])"]], { row: 1, column: 2 }),
        ...cellsFrom([["=SUM(IFERROR(C2#,0))"], ['=" a<b & "&A2'], ["=Rated*2"], ["=A2:A3*2"]], { row: 1, column: 4 }),
        ...cellsFrom([["  kept _x0041_ \u0007 & <x>"], [true], ["=1/0"]], { row: 8 }),
      ],
    },
    { name: "Tim's bench", cells: cellsFrom([["='Bench log'!A2+1"]]) },
  ],
};

const written = async () => {
  const grid = await calculate(book, catalogue);
  return writeWorkbook(withValues(book, grid), catalogue);
};

describe("a new workbook", () => {
  test("gives back what was written: values, formulas, looks, table, names, lists", async () => {
    const again = readWorkbook(await written(), catalogue);
    const [log, bench] = again.sheets;
    const at = (row: number, column: number) => log?.cells.find((cell) => cell.row === row && cell.column === column);
    expect(at(0, 0)).toMatchObject({
      value: "current",
      style: { bold: true, fill: "DDEEFF", color: "102030", wrap: true },
    });
    expect(at(1, 0)).toMatchObject({ value: 20, style: { format: '0.00 "A"' } });
    expect(at(1, 2)).toMatchObject({
      value: 3.2,
      formula: "=BIMETAL.CONTACT.WATTS(A2:A4,B2:B4)",
      spill: { rows: 3, columns: 1 },
    });
    expect([at(2, 2)?.value, at(3, 2)?.value]).toMatchObject([2, { code: "#VALUE!" }]);
    expect(at(1, 3)).toMatchObject({ value: 25, formula: "=SUM(Trials[current])", stored: "single" });
    expect(at(1, 4)).toMatchObject({ value: 5.2, formula: "=SUM(IFERROR(C2#,0))" });
    expect(at(2, 4)).toMatchObject({ value: " a<b & 20", formula: '=" a<b & "&A2' });
    expect(at(4, 4)).toMatchObject({ value: 40, formula: "=A2:A3*2", spill: { rows: 2, columns: 1 } });
    expect([at(8, 0)?.value, at(9, 0)?.value, at(10, 0)?.value]).toMatchObject([
      "  kept _x0041_ \u0007 & <x>",
      true,
      { code: "#DIV/0!" },
    ]);
    expect(log).toMatchObject({
      frozen: { rows: 1, columns: 0 },
      tables: book.sheets[0]?.tables,
      choices: book.sheets[0]?.choices,
    });
    expect(log?.widths?.get(2)).toBe(20);
    expect(again.names).toEqual(book.names);
    expect(bench).toMatchObject({ name: "Tim's bench", cells: [{ value: 21 }] });
  });

  test("spells functions as spreadsheets bind them, and marks what may fill several cells", async () => {
    const sheet = partsOf(await written()).get("xl/worksheets/sheet1.xml");
    expect(sheet).toContain(
      '<c r="C2" cm="1"><f t="array" ref="C2:C4">_xldudf_BIMETAL_CONTACT_WATTS(A2:A4,B2:B4)</f><v>3.2</v></c>',
    );
    expect(sheet).toContain(
      '<c r="E2" cm="1"><f t="array" ref="E2">SUM(IFERROR(_xlfn.ANCHORARRAY(C2),0))</f><v>5.2</v></c>',
    );
    expect(sheet).toContain('<c r="E4"><f>Rated*2</f><v>40</v></c>');
    expect(sheet).not.toMatch(/BIMETAL\./);
  });

  test("is the same to the byte each time", async () => {
    expect(Buffer.from(await written()).equals(Buffer.from(await written()))).toBe(true);
  });

  test("is read by a library that is not ours", async () => {
    const reader = await readByExceljs(await written());
    const sheet = reader.getWorksheet("Bench log");
    expect(sheet?.getCell("A2").value).toBe(20);
    expect(sheet?.getCell("A1").font.bold).toBe(true);
    expect(sheet?.getCell("C3").value).toBe(2);
    expect(sheet?.getCell("D2").result).toBe(25);
    expect(sheet?.getColumn(3).width).toBe(20);
    expect(sheet?.views[0]).toMatchObject({ state: "frozen", ySplit: 1 });
    expect(sheet?.getTable("Trials")).toBeDefined();
    // Printed, all columns stand on one page, and rows go on over as many as they need.
    expect(sheet?.pageSetup).toMatchObject({ fitToPage: true, fitToHeight: 0, orientation: "landscape" });
  });

  test.each([[""], ["a/b"], ["x".repeat(32)], ["'quoted'"]])("no sheet is called %j", (name) => {
    expect(() => writeWorkbook({ sheets: [{ name, cells: [] }] }, catalogue)).toThrow(/A sheet cannot be called/);
  });
});
