import {
  copyFileSync,
  existsSync,
  linkSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { Workbook } from "exceljs";
import { unzipSync, zipSync } from "fflate";
import { CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { writeWorkbook } from "../../../src/hosts/engine/xlsx/write-workbook";
import { recalculateWorkbook } from "../../../src/hosts/workbook/recalculate-workbook";
import { cellsFrom } from "../engine/cells-from";

const recalculate = (...words: string[]) => recalculateWorkbook(words, catalogue);

let folder: string;
const at = (name: string) => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "bimetal-workbook-"));
  const log = [
    ["current", "drop", "heat"],
    [20, 0.16, "=BIMETAL.CONTACT.WATTS(A2:A4,B2:B4)"],
    ["x", 0.2],
    [30, 0.1],
  ];
  const cells = [...cellsFrom(log), ...cellsFrom([["=C2*2"], ["=[1]Other!A1"], ['="=1+1"']], { row: 1, column: 4 })];
  writeFileSync(at("log.xlsx"), writeWorkbook({ sheets: [{ name: "Log", cells }] }, catalogue));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("the command recalculate", () => {
  test("says what is ours, what is refused where and why, and what keeps its value", async () => {
    const { out, err, code } = await recalculate(at("log.xlsx"));
    expect(out.split("\n")).toEqual([
      "log.xlsx: 4 formulas, 1 with functions of BIMETAL.",
      "1 cell is refused or shows an error:",
      '  Log!C3: #VALUE!, current: a number in A is wanted, not the text "x".',
      "1 formula was not calculated and keeps its value:",
      "  Log!E3: It refers to another workbook ([1]Other!A1). =[1]Other!A1",
      "",
    ]);
    expect({ err, code }).toEqual({ err: [], code: 1 });
  });

  test("--out writes a copy with the values, and touches nothing else", async () => {
    const before = readFileSync(at("log.xlsx"));
    const { out } = await recalculate(at("log.xlsx"), "--out", at("new.xlsx"));
    expect(out).toContain(`Wrote ${at("new.xlsx")}: 5 cells have a new value.`);
    expect(readFileSync(at("log.xlsx")).equals(before)).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["log.xlsx", "new.xlsx"]);
    const cells = readWorkbook(readFileSync(at("new.xlsx")), catalogue).sheets[0]?.cells ?? [];
    const value = (row: number, column: number) =>
      cells.find((cell) => cell.row === row && cell.column === column)?.value;
    expect([value(1, 2), value(3, 2), value(1, 4), value(3, 4)]).toEqual([3.2, 3, 6.4, "=1+1"]);
  });

  test("writes over the workbook itself only when it is named twice, and then keeps its permissions", async () => {
    copyFileSync(at("log.xlsx"), at("own.xlsx"));
    const mode = statSync(at("own.xlsx")).mode;
    const { out } = await recalculate(at("own.xlsx"), "--out", at("own.xlsx"));
    expect(out).toContain("5 cells have a new value");
    expect(statSync(at("own.xlsx")).mode).toBe(mode);
    expect((await recalculate(at("own.xlsx"), "--out", at("own.xlsx"))).out).toContain("0 cells have a new value");
  });

  test("--values writes a copy in which the values of our formulas stand alone, beside --out or without it", async () => {
    const before = readFileSync(at("log.xlsx"));
    const alone = await recalculate(at("log.xlsx"), "--values", at("alone.xlsx"));
    expect(alone.code).toBe(1);
    expect(alone.out.trimEnd().split("\n").at(-1)).toBe(
      `Wrote ${at("alone.xlsx")}: in place of 1 formula that needs functions of BIMETAL its value stands there.`,
    );
    const both = await recalculate(at("log.xlsx"), "--values", at("shown.xlsx"), "--out", at("new.xlsx"));
    expect(both.out.trimEnd().split("\n").slice(-2)).toEqual([
      `Wrote ${at("shown.xlsx")}: in place of 1 formula that needs functions of BIMETAL its value stands there.`,
      `Wrote ${at("new.xlsx")}: 5 cells have a new value.`,
    ]);
    expect(readFileSync(at("log.xlsx")).equals(before)).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["alone.xlsx", "log.xlsx", "new.xlsx", "shown.xlsx"]);
    expect(readFileSync(at("alone.xlsx")).equals(readFileSync(at("shown.xlsx")))).toBe(true);
    const cells = readWorkbook(readFileSync(at("shown.xlsx")), catalogue).sheets[0]?.cells ?? [];
    expect(cells.flatMap(({ formula }) => formula ?? [])).toEqual(["=C2*2", "=[1]Other!A1", '="=1+1"']);
    const heat = cells.filter(({ row, column }) => column === 2 && row > 0).map(({ value }) => value);
    expect(heat).toEqual([3.2, new CellError("#VALUE!"), 3]);
  });

  test("--values tells of a table that would bring a formula of ours back", async () => {
    const workbook = new Workbook();
    const sheet = workbook.addWorksheet("Log");
    sheet.addTable({
      ...{ name: "Trials", ref: "A1", headerRow: true, totalsRow: true },
      columns: [{ name: "current" }, { name: "drop", totalsRowFunction: "sum" }, { name: "heat & more" }],
      rows: [[20, 0.16, { formula: "_xldudf_BIMETAL_CONTACT_WATTS(A2,B2)", result: 0 }]],
    });
    const parts = unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer()));
    const table = Buffer.from(parts["xl/tables/table1.xml"] ?? []).toString();
    const filled = table.replace(
      /(name="heat &amp; more"[^>]*?)\/>/,
      "$1><calculatedColumnFormula>_xldudf_BIMETAL_CONTACT_WATTS(Trials[[#This Row],[current]],Trials[[#This Row],[drop]])</calculatedColumnFormula></tableColumn>",
    );
    expect(filled).not.toBe(table);
    writeFileSync(at("table.xlsx"), zipSync({ ...parts, "xl/tables/table1.xml": new TextEncoder().encode(filled) }));
    const { out } = await recalculate(at("table.xlsx"), "--values", at("shown.xlsx"));
    expect(out.trimEnd().split("\n").slice(-2)).toEqual([
      `Wrote ${at("shown.xlsx")}: in place of 1 formula that needs functions of BIMETAL its value stands there.`,
      '  Its table "Trials" still fills the column "heat & more" by a formula of BIMETAL when a row or a total is added.',
    ]);
    const after = unzipSync(new Uint8Array(readFileSync(at("shown.xlsx"))));
    expect(Buffer.from(after["xl/tables/table1.xml"] ?? []).toString()).toBe(filled);
  });

  test("--values never takes the formulas out of the workbook itself, whatever it is called there, nor out of the other copy", async () => {
    const before = readFileSync(at("log.xlsx"));
    symlinkSync(at("log.xlsx"), at("link.xlsx"));
    linkSync(at("log.xlsx"), at("same.xlsx"));
    const own = /would take the formulas out of the workbook itself; name another file\.$/;
    const clashes: [string[], RegExp][] = [
      [["--values", at("log.xlsx")], own],
      [["--values", join(folder, "..", basename(folder), "log.xlsx")], own],
      [["--values", at("link.xlsx")], own],
      [["--values", at("same.xlsx")], own],
      [["--values", at("log.xlsx"), "--out", at("log.xlsx")], own],
      [["--values", at("x.xlsx"), "--out", join(folder, ".", "x.xlsx")], /^--out and --values name the same file/],
    ];
    for (const [words, sentence] of clashes) {
      const { err, code } = await recalculate(at("log.xlsx"), ...words);
      expect([words, code, err]).toEqual([words, 2, [expect.stringMatching(sentence)]]);
    }
    expect(readFileSync(at("log.xlsx")).equals(before)).toBe(true);
    expect(existsSync(at("x.xlsx"))).toBe(false);
  });

  test("a copy that cannot be written leaves nothing half done, and says what was written before it", async () => {
    const place = join(folder, "no", "log.xlsx");
    const first = await recalculate(at("log.xlsx"), "--values", place, "--out", at("new.xlsx"));
    expect(first).toEqual({ out: "", err: [`${place} could not be written (ENOENT).`], code: 2 });
    expect(readdirSync(folder)).toEqual(["log.xlsx"]);
    const second = await recalculate(at("log.xlsx"), "--values", at("shown.xlsx"), "--out", place);
    expect(second.err).toEqual([`${place} could not be written (ENOENT); ${at("shown.xlsx")} was.`]);
    expect(readdirSync(folder).sort()).toEqual(["log.xlsx", "shown.xlsx"]);
  });

  test("--csv prints a sheet, harmless for a spreadsheet, and the summary elsewhere", async () => {
    const { out, err } = await recalculate(at("log.xlsx"), "--csv", "log");
    expect(out).toBe("current,drop,heat,,\n20,0.16,3.2,,6.4\nx,0.2,#VALUE!,,#NAME?\n30,0.1,3,,'=1+1\n");
    expect(err[0]).toBe("log.xlsx: 4 formulas, 1 with functions of BIMETAL.");
  });

  test.each<[string, string[], RegExp]>([
    ["no workbook", [], /^Name a workbook/],
    ["two workbooks", ["a.xlsx", "b.xlsx"], /^One workbook at a time/],
    ["an unknown option", ["a.xlsx", "--fast"], /^Unknown option '--fast'/],
    ["a file that is not there", ["/nowhere/log.xlsx"], /^There is no file/],
    ["a folder", ["FOLDER"], /is no file/],
    ["a text file", ["FOLDER/note.txt"], /this is not an \.xlsx workbook|no zip package/i],
    [
      "a sheet that is not there",
      ["FOLDER/log.xlsx", "--csv", "Logg"],
      /^There is no sheet "Logg"; there are "Log"\.$/,
    ],
    ["another ending", ["FOLDER/log.xlsx", "--out", "FOLDER/log.csv"], /must end in \.xlsx/],
    ["another ending of the other copy", ["FOLDER/log.xlsx", "--values", "FOLDER/log.csv"], /must end in \.xlsx/],
    ["a place that is not there", ["FOLDER/log.xlsx", "--out", "FOLDER/no/log.xlsx"], /could not be written/],
  ])("%s: one sentence and 2", async (_, words, sentence) => {
    writeFileSync(at("note.txt"), "a note");
    const { out, err, code } = await recalculate(...words.map((word) => word.replace("FOLDER", folder)));
    expect({ out, code, sentences: err.length }).toEqual({ out: "", code: 2, sentences: 1 });
    expect(err[0]).toMatch(sentence);
    expect(existsSync(at("log.csv"))).toBe(false);
  });

  test("--help says what it does", async () => {
    expect(await recalculate("--help")).toMatchObject({ out: expect.stringContaining("--csv"), code: 0 });
  });
});
