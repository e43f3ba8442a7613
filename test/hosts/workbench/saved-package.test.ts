import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { unzipSync } from "fflate";
import { catalogue } from "../../../src/functions";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { readByExceljs } from "../../support/read-by-exceljs";
import { corpus } from "../engine/corpus-workbooks";
import { differing } from "./differing";
import { type Visit, visits } from "./visits";

// Workbooks of other writers (test/hosts/engine/corpus/README.md) opened in the built workbench, typed into, and saved.

const visit = visits();
let person: Visit;

const opened = async (name: string, from = corpus): Promise<Uint8Array> => {
  person = await visit(join(from, name));
  await person.shows("file", name);
  return new Uint8Array(await readFile(join(from, name)));
};

/** Selects a cell of the first sheet by keyboard. */
const goTo = async (right: number, down: number) => {
  await person.page.click(".shop-sheet");
  for (let i = 0; i < right; i++) await person.press("ArrowRight");
  for (let i = 0; i < down; i++) await person.press("ArrowDown");
};

const ofSheets = /^xl\/worksheets\/[^/]*\.xml$/;

test("a workbook with charts and comments keeps them byte for byte; the cell that was typed is in the copy", async () => {
  const before = await opened("by-xlsxwriter.xlsx");
  await goTo(1, 1);
  await person.shows("said", "Log!B2: 0.16");
  await person.type("0.2");
  await person.press("ArrowUp");
  await person.shows("said", "Log!B2: 0.2");
  const after = await person.save();
  await person.shows("file", "by-xlsxwriter.xlsx: saved as a copy, with what is not shown here: charts,");
  const [old, now] = [unzipSync(before), unzipSync(after)];
  const kept = Object.keys(old).filter((part) => /chart|drawing|comments|media|theme|docProps|tables/.test(part));
  expect(kept.length).toBeGreaterThan(8);
  for (const part of kept)
    expect([part, Buffer.from(now[part] ?? []).equals(Buffer.from(old[part] ?? []))]).toEqual([part, true]);
  expect(differing(before, after).filter((part) => !ofSheets.test(part))).toEqual([]);
  const byExceljs = await readByExceljs(after);
  expect(byExceljs.getWorksheet("Log")?.getCell("B2").value).toBe(0.2);
  // 20 A x 0.2 V, by hand.
  expect(byExceljs.getWorksheet("Log")?.getCell("F2").value).toMatchObject({ result: 4 });
});

test("taken back, what was typed leaves no trace; a saved copy changes nothing in the grid", async () => {
  const before = await opened("by-xlsxwriter.xlsm");
  const untouched = await person.save();
  await goTo(1, 1);
  await person.type("0.2");
  const typed = await person.save();
  expect(differing(untouched, typed)).toEqual(["xl/worksheets/sheet1.xml"]);
  await goTo(1, 1);
  await person.shows("said", "Log!B2: 0.2");
  await person.holding("Control", "KeyZ");
  await person.shows("said", "Log!B2: 0.16");
  const back = await person.save();
  expect(differing(untouched, back)).toEqual([]);
  // Its macros are there, and so it keeps the name under which spreadsheets look for them.
  expect(differing(before, back).filter((part) => !ofSheets.test(part))).toEqual([]);
  await person.shows("file", "by-xlsxwriter.xlsm: saved as a copy, with what is not shown here:");
  await person.shows("file", "macros");
});

test("a renamed sheet makes a copy that is written anew, says so, and is no workbook with macros", async () => {
  await opened("by-xlsxwriter.xlsm");
  await person.page.click('[aria-label="Rename sheet Log"]');
  await person.page.keyboard.type("Bench");
  await person.press("Enter");
  const after = await person.save();
  await person.shows(
    "file",
    "by-xlsxwriter.xlsx: saved as a copy, written anew because the sheet Log was renamed, without what stays in the original only:",
  );
  expect(readWorkbook(after, catalogue).sheets.map(({ name }) => name)).toContain("Bench");
  expect(Object.keys(unzipSync(after))).not.toContain("xl/vbaProject.bin");
});

test("a workbook of values alone is saved too, with what its writer had put around them", async () => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Log", { headerFooter: { oddFooter: "Fernhollow" } });
  sheet.getCell("A1").value = "current";
  sheet.getCell("A2").value = 51;
  sheet.getCell("A2").note = "second meter";
  const folder = await mkdtemp(join(tmpdir(), "bimetal-values-"));
  await workbook.xlsx.writeFile(join(folder, "values.xlsx"));
  const before = await opened("values.xlsx", folder);
  await rm(folder, { recursive: true });
  await goTo(0, 1);
  await person.type("36");
  const after = await person.save();
  await person.shows("file", "values.xlsx: saved as a copy, with what is not shown here: comments, page set-up.");
  expect(differing(before, after)).toEqual(["xl/worksheets/sheet1.xml"]);
  expect(readWorkbook(after, catalogue).sheets[0]?.cells.map(({ value }) => value)).toEqual(["current", 36]);
});
