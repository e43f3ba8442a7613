// npm install --no-save xlsx-populate@1.21.0 && node by-populate.mjs: by-populate.xlsx (xlsx-populate, MIT).

import { join } from "node:path";
import { fileURLToPath } from "node:url";
import populate from "xlsx-populate";

const folder = join(fileURLToPath(import.meta.url), "../..");
const book = await populate.fromBlankAsync();
const log = book.sheet(0).name("Log");
log.range("A1:C4").value([
  ["current", "drop", "outcome"],
  [20, 0.16, "held"],
  [10, 0.2, "tripped"],
  [30, 0.1, "tripped"],
]);
log.range("A1:C1").style({ bold: true, fill: "DDEEFF" });
log.cell("E2").formula("BIMETAL.CONTACT.WATTS(A2,B2)");
// A range's formula is written once and shared.
log.range("F2:F4").formula("A2*$B$2");
log.range("G2:G4").formula("bimetal.contact.watts(A2,B2)");
log.range("H2:H4").formula("_xldudf_BIMETAL_CONTACT_WATTS(A2,B2)+0");
log.cell("I2").formula("SUM(G2:G4)");
log.cell("I3").formula('COUNTIF(C2:C4,"tripped")');
log.cell("I4").formula("rated*2");
log
  .cell("A6")
  .value(new Date(2023, 2, 15))
  .style("numberFormat", "yyyy-mm-dd");
log.cell("A7").value("a link").hyperlink("https://example.org/");
log.cell("A8").value(new populate.RichText().add("two ").add("fonts", { italic: true }));
log.range("C2:C9").dataValidation({ type: "list", allowBlank: true, formula1: '"held,tripped"' });
log.autoFilter(log.range("A1:C4"));
log.freezePanes(0, 1);
book.addSheet("Hidden").hidden(true).cell("A1").formula("Log!G2*2");
book.definedName("rated", log.cell("A2"));
// The library's blank workbook tells of a folder on its maker's machine.
book._node.children = book._node.children.filter(({ name }) => name !== "mc:AlternateContent");
await book.toFileAsync(join(folder, "by-populate.xlsx"));
