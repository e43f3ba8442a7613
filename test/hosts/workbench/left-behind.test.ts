import ExcelJS from "exceljs";
import { catalogue } from "../../../src/functions";
import { type OpenedWorkbook, openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { writeWorkbook } from "../../../src/hosts/engine/xlsx/write-workbook";
import { leftBehind } from "../../../src/hosts/workbench/page/left-behind";
import { nameOfCopy, sayCopy } from "../../../src/hosts/workbench/page/say-copy";
import { cellsFrom } from "../engine/cells-from";

// Files written by exceljs, feature by feature.

type Make = (sheet: ExcelJS.Worksheet, workbook: ExcelJS.Workbook) => void;

const lostFrom = async (make: Make): Promise<string[]> => leftBehind(await madeBy(make));

const madeBy = async (make: Make): Promise<OpenedWorkbook> => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Log", { pageSetup: undefined });
  sheet.getCell("A1").value = 1;
  make(sheet, workbook);
  return openWorkbook(new Uint8Array(await workbook.xlsx.writeBuffer()), catalogue);
};

const pixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

test.each<[string, Parameters<typeof lostFrom>[0]]>([
  [
    "conditional formats",
    (sheet) =>
      sheet.addConditionalFormatting({
        ref: "A1:A9",
        rules: [
          { type: "cellIs", operator: "greaterThan", formulae: [5], priority: 1, style: { font: { bold: true } } },
        ],
      }),
  ],
  ["merged cells", (sheet) => sheet.mergeCells("A1:B2")],
  [
    "links",
    (sheet) => {
      sheet.getCell("A1").value = { text: "page", hyperlink: "https://example.org/" };
    },
  ],
  [
    "filters",
    (sheet) => {
      sheet.autoFilter = "A1:B1";
    },
  ],
  [
    "comments",
    (sheet) => {
      sheet.getCell("A1").note = "seen";
    },
  ],
  [
    "pictures",
    (sheet, workbook) => {
      const id = workbook.addImage({ base64: pixel, extension: "png" });
      sheet.addImage(id, "C1:D2");
    },
  ],
  [
    "rules for what may be typed",
    (sheet) => {
      sheet.getCell("A1").dataValidation = { type: "decimal", operator: "greaterThan", formulae: [0] };
    },
  ],
  [
    "hidden rows and columns (they show)",
    (sheet) => {
      sheet.getColumn(2).hidden = true;
    },
  ],
  [
    "borders of cells",
    (sheet) => {
      sheet.getCell("A1").border = { top: { style: "thin" } };
    },
  ],
  [
    "alignment",
    (sheet) => {
      sheet.getCell("A1").alignment = { horizontal: "center" };
    },
  ],
  [
    "fonts and their sizes",
    (sheet) => {
      sheet.getCell("A1").font = { size: 14 };
    },
  ],
  [
    "heights of rows",
    (sheet) => {
      sheet.getRow(1).height = 40;
    },
  ],
  [
    "page set-up",
    (sheet) => {
      sheet.headerFooter.oddFooter = "page";
    },
  ],
])("what a copy lacks is told: %s", async (what, make) => {
  expect(await lostFrom(make)).toContain(what);
  expect(await lostFrom(() => {})).not.toContain(what);
});

test("a file of our own loses nothing", () => {
  const book = {
    sheets: [
      {
        name: "Log",
        cells: cellsFrom([["current", 51]], { style: { bold: true, fill: "F1EDE3", wrap: true } }),
        choices: [{ block: { row: 1, column: 0, rows: 9, columns: 1 }, words: ["held", "tripped"] }],
        widths: new Map([[0, 12]]),
        frozen: { rows: 1, columns: 0 },
        tables: [{ name: "Trials", block: { row: 0, column: 0, rows: 2, columns: 2 }, columns: ["current", "51"] }],
      },
    ],
  };
  expect(leftBehind(openWorkbook(writeWorkbook(book, catalogue), catalogue))).toEqual([]);
});

test("what is said of a copy: what it holds that does not show, what was moved, or why it is written anew", async () => {
  const opened = await madeBy((sheet) => {
    sheet.getCell("A1").note = "seen";
    sheet.getColumn(2).hidden = true;
  });
  const plain = await madeBy(() => {});
  expect(sayCopy(plain, { moved: [] })).toBe("saved as a copy.");
  expect(sayCopy(opened, { moved: ["Log"] })).toBe(
    "saved as a copy, with what is not shown here: comments, hidden rows and columns. Cells of Log were moved: " +
      "what points at them from outside the cells (a chart, a rule) points where they were.",
  );
  expect(sayCopy(opened, { anew: "the sheet Log was renamed" })).toBe(
    "saved as a copy, written anew because the sheet Log was renamed, without what stays in the original only: " +
      "comments, hidden rows and columns (they show).",
  );
});

test("only a copy in its original's package keeps the name of a workbook with macros", () => {
  expect(nameOfCopy("Log.XLSM", { moved: [] })).toBe("Log.XLSM");
  expect(nameOfCopy("Log.XLSM", { anew: "the sheet Log was renamed" })).toBe("Log.xlsx");
  expect(nameOfCopy("Log.xlsx", { anew: "the sheet Log was renamed" })).toBe("Log.xlsx");
});
