// node by-exceljs.mjs: by-exceljs.xlsx and by-exceljs-stream.xlsx, with exceljs (MIT), from the project's own packages.

import { join } from "node:path";
import { fileURLToPath } from "node:url";
import exceljs from "exceljs";

const folder = join(fileURLToPath(import.meta.url), "../..");
const made = new Date("2024-01-01T00:00:00Z");
// One grey pixel.
const pixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

const book = new exceljs.Workbook();
book.created = book.modified = made;
const log = book.addWorksheet("Bench log", { pageSetup: { orientation: "landscape", printArea: "A1:D9" } });
log.addTable({
  name: "Trials",
  ref: "A1",
  headerRow: true,
  totalsRow: true,
  columns: [
    { name: "current", totalsRowLabel: "total" },
    { name: "drop [V]", totalsRowFunction: "sum" },
  ],
  rows: [
    [20, 0.16],
    [10, 0.2],
    [30, 0.1],
  ],
});
const formula = (address, text, result) => {
  log.getCell(address).value = { formula: text, result };
};
formula("D2", "BIMETAL.CONTACT.WATTS(A2,B2)", 0);
// A formula that is written once and shared, one cell of ours and one of a spreadsheet's own.
for (const row of [3, 4]) log.getCell(`D${row}`).value = { sharedFormula: "D2", result: 0 };
formula("E2", "A2*$B$2", 0);
for (const row of [3, 4]) log.getCell(`E${row}`).value = { sharedFormula: "E2", result: 0 };
log.fillFormula("F2:F4", "A2:A4*2", [1, 2, 3], "array");
formula("G2", '_xldudf_BIMETAL_TRIP_RANGE(51,20,"C")', 0);
formula("G3", "SUM(Trials[current])", 0);
formula("G4", 'IFERROR(_xldudf_bimetal_contact_watts("x",1),"refused")', "old");
formula("G5", "[1]Log!A1", 17);
formula("G6", "G5+1", 0);
formula("G7", "NoSuchName*2", 5);
log.getCell("A2").note = { texts: [{ text: "measured " }, { font: { bold: true }, text: "twice" }] };
log.getCell("A8").value = { richText: [{ text: "two " }, { font: { italic: true }, text: "fonts" }] };
log.getCell("A9").value = { text: "a link", hyperlink: "https://example.org/?a=1&b=2" };
log.getCell("A10").value = made;
log.getCell("A11").value = "  <kept> & _x0041_ ";
log.getCell("C2").dataValidation = { type: "list", formulae: ['"held,tripped"'] };
log.getColumn(1).width = 22;
log.getRow(12).height = 40;
log.addConditionalFormatting({
  ref: "A2:A4",
  rules: [
    { type: "cellIs", operator: "greaterThan", formulae: ["15"], style: { font: { bold: true } }, priority: 1 },
    {
      type: "iconSet",
      iconSet: "3TrafficLights",
      cfvo: [
        { type: "percent", value: 0 },
        { type: "percent", value: 33 },
        { type: "percent", value: 67 },
      ],
      priority: 2,
    },
  ],
});
log.addImage(book.addImage({ base64: pixel, extension: "png" }), "I1:J3");
log.headerFooter.oddFooter = "&CPage &P";
book.addWorksheet("Plain").getCell("A1").value = "text";
const hidden = book.addWorksheet("Put away", { state: "hidden" });
hidden.getCell("A1").value = { formula: "'Bench log'!D2+rated", result: 0 };
await hidden.protect("bench", { spinCount: 1 });
book.definedNames.add("'Bench log'!$A$2", "rated");
await book.xlsx.writeFile(join(folder, "by-exceljs.xlsx"));

// The streaming writer: texts in the cells, sizes after the data of each zip entry.
const stream = new exceljs.stream.xlsx.WorkbookWriter({
  filename: join(folder, "by-exceljs-stream.xlsx"),
  useSharedStrings: false,
  useStyles: true,
  created: made,
  modified: made,
});
const long = stream.addWorksheet("Log");
long.columns = [{ header: "current" }, { header: "drop" }, { header: "heat" }, { header: "range" }];
for (let row = 2; row <= 60; row++)
  long
    .addRow([
      10 + row,
      row === 7 ? "0,2" : 0.01 * row,
      { formula: `BIMETAL.CONTACT.WATTS(A${row},B${row})`, result: 0 },
      { formula: `A${row}&" A"`, result: "" },
    ])
    .commit();
await stream.commit();
