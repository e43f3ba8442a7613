// npm install --no-save @e965/xlsx@0.20.3 && node by-sheetjs.mjs: by-sheetjs.xlsx and by-sheetjs.xlsm (SheetJS, Apache-2.0).

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import xlsx from "@e965/xlsx";

const folder = join(fileURLToPath(import.meta.url), "../..");

const sheetOf = () => {
  const sheet = xlsx.utils.aoa_to_sheet([
    ["current", "drop", "heat"],
    [20, 0.16],
    [10, 0.2],
    [30, 0.1],
  ]);
  const put = (address, cell) => {
    sheet[address] = { t: "n", v: 0, ...cell };
  };
  // D: a dynamic array, with the metadata part that marks it.
  put("C2", { f: "_xldudf_BIMETAL_CONTACT_WATTS(A2:A4,B2:B4)", F: "C2:C4", D: true });
  put("C3", { F: "C2:C4" });
  put("C4", { F: "C2:C4" });
  put("D2", { f: "A2:A4*2", F: "D2:D5" });
  for (const row of [3, 4, 5]) put(`D${row}`, { F: "D2:D5" });
  put("E2", { f: "_xlfn.SEQUENCE(2,2)", F: "E2:G4", D: true });
  put("H2", { f: "BIMETAL.CONTACT.WATTS(A2:A4,B2:B4)" });
  put("I2", { f: 'bimetal.trip.range(51,20,"C")' });
  put("K2", { f: "Rated*2" });
  put("K3", { f: "SUM(A2:A4)" });
  put("K4", { t: "s", v: "old", f: 'A2&" A"' });
  put("K5", { t: "b", v: false, f: "A2>A3" });
  put("K6", { t: "e", v: 0x07, f: "1/(A2-20)" });
  put("K7", { t: "e", v: 0x2a, f: "A2-20" });
  sheet.A6 = { t: "d", v: new Date(Date.UTC(2023, 2, 15)), z: "yyyy-mm-dd" };
  sheet.A7 = { t: "s", v: "a remark beside it", c: [{ a: "Bench", t: "measured twice" }] };
  sheet["!ref"] = "A1:K9";
  sheet["!merges"] = [xlsx.utils.decode_range("A8:B8")];
  sheet["!autofilter"] = { ref: "A1:C4" };
  sheet["!protect"] = { password: "bench" };
  return sheet;
};

const bookOf = (more) => {
  const book = xlsx.utils.book_new();
  xlsx.utils.book_append_sheet(book, sheetOf(), "Log");
  xlsx.utils.book_append_sheet(book, xlsx.utils.aoa_to_sheet([["away"], [7]]), "Away");
  book.Workbook = {
    Names: [
      { Name: "Rated", Ref: "Log!$A$2" },
      { Name: "Rated", Ref: "Away!$A$2", Sheet: 1 },
      { Name: "Quiet", Ref: "Log!$A$3", Hidden: true },
    ],
    Sheets: [{ Hidden: 0 }, { Hidden: 1 }],
    ...more,
  };
  return book;
};

const write = (name, book, options) =>
  writeFileSync(join(folder, name), xlsx.write(book, { type: "buffer", compression: true, ...options }));

write("by-sheetjs.xlsx", bookOf({ WBProps: { date1904: true } }), { bookType: "xlsx", bookSST: true });
const withMacros = bookOf({});
// No real macros: bytes that only stand where they would.
withMacros.vbaraw = Uint8Array.from({ length: 1024 }, (_, place) => place % 251);
write("by-sheetjs.xlsm", withMacros, { bookType: "xlsm", bookSST: false });
