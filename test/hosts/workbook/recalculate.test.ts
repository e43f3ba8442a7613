import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { catalogue } from "../../../src/functions";
import { cellsFrom } from "../../../src/hosts/engine/book";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { writeWorkbook } from "../../../src/hosts/engine/xlsx/write-workbook";
import { recalculateWorkbook } from "../../../src/hosts/workbook/recalculate-workbook";

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
