import { copyFileSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { unzipSync, zipSync } from "fflate";
import { CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine/calculate";
import { readPlace, sayPlace } from "../../../src/hosts/engine/place";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { recalculateWorkbook } from "../../../src/hosts/workbook/recalculate-workbook";
import { surprises } from "./compare-packages";
import { callsOfOurs, compareValues } from "./compare-values";
import { bytesOf, corpus, corpusWorkbooks } from "./corpus-workbooks";

interface Expected {
  /** Formulas that cannot be calculated and keep their values. */
  readonly kept?: readonly string[];
  /** Values worked by hand from what is typed: 20 A × 0.16 V = 3.2 W, 10 A × 0.2 V = 2 W, 30 A × 0.1 V = 3 W, and so on. */
  readonly values: Readonly<Record<string, string | number | boolean>>;
}

/** E2:E5, F2:F4 and the array formulas of the three workbooks that LibreOffice wrote from one script. */
const libreoffice = {
  "'Bench log'!E2": 3.2,
  "'Bench log'!F2": 3.2,
  "'Bench log'!F3": 2,
  "'Bench log'!F4": 3,
  "'Bench log'!F5": "#VALUE!",
  "'Bench log'!G2": 1,
  "'Bench log'!H2": 60,
  "'Bench log'!G3": 40,
  "'Bench log'!G4": 1.16,
  "'Bench log'!G5": "#VALUE!",
  "'Bench log'!I3": "tripped",
  "'Bench log'!I5": true,
  "'Bench log'!J4": 60,
  "'Bench log'!J5": "#N/A",
  "'Bench log'!K2": 3.2,
  "'Bench log'!K4": 3,
  "Other!A1": 6.4,
};
const xlsxwriter = {
  ...{ "Log!D3": 20, "Log!F2": 3.2, "Log!F4": 3, "Log!F5": "#VALUE!", "Log!F6": 3.75, "Log!H2": 1, "Log!I2": 60 },
  ...{ "Log!H3": 11.95, "Log!H4": 3.2, "Log!H7": 3, "Log!K3": 20, "Log!L3": 20, "Log!L4": "#N/A", "Log!K6": 8.2 },
  ...{ "Log!K7": 0.81, "Log!K8": 40, "Log!K9": "tripped", "Log!K10": "old & <more>" },
};
const sheetjs = {
  ...{ "Log!C2": 3.2, "Log!C4": 3, "Log!D3": 20, "Log!D5": "#N/A", "Log!E2": 1, "Log!F3": 4, "Log!H4": 3 },
  ...{ "Log!I2": 1, "Log!J2": 60, "Log!K2": 40, "Log!K3": 60, "Log!K4": "20 A", "Log!K5": true },
  ...{ "Log!K6": "#DIV/0!", "Log!K7": 0 },
};

const expected: Readonly<Record<string, Expected>> = {
  // Serial 45000 is 15 March 2023 where days count from 1900.
  "by-libreoffice.xlsx": { values: { ...libreoffice, "Other!A3": 45001 } },
  "by-libreoffice.xlsm": { values: { ...libreoffice, "Other!A3": 45001 } },
  "by-libreoffice-1904.xlsx": { kept: ["Other!A3"], values: libreoffice },
  "by-xlsxwriter.xlsx": { values: xlsxwriter },
  "by-xlsxwriter.xlsm": { values: xlsxwriter },
  "by-openpyxl.xlsx": {
    kept: ["'Bench log'!H3", "'Bench log'!H4"],
    values: {
      ...{ "'Bench log'!F2": 3.2, "'Bench log'!F4": 3, "'Bench log'!G2": 3.2, "'Bench log'!G3": 2 },
      ...{ "'Bench log'!G4": 60, "'Bench log'!I2": "held it", "'Bench log'!I3": "#DIV/0!", "'Bench log'!I4": 20.5 },
      ...{ "Other!A1": 6.4, "Other!A2": 6.4 },
    },
  },
  "by-exceljs.xlsx": {
    kept: ["'Bench log'!B5", "'Bench log'!G5", "'Bench log'!G7"],
    values: {
      ...{ "'Bench log'!D2": 3.2, "'Bench log'!D4": 3, "'Bench log'!E3": 1.6, "'Bench log'!F4": 60 },
      ...{ "'Bench log'!G2": 1, "'Bench log'!H2": 60, "'Bench log'!G3": 60, "'Bench log'!G4": "refused" },
      ...{ "'Bench log'!G6": 18, "'Put away'!A1": 23.2 },
    },
  },
  "by-exceljs-stream.xlsx": {
    values: { "Log!C2": 0.24, "Log!C7": "#VALUE!", "Log!C60": 42, "Log!D60": "70 A" },
  },
  "by-sheetjs.xlsx": { values: sheetjs },
  "by-sheetjs.xlsm": { values: sheetjs },
  "by-populate.xlsx": {
    values: {
      ...{ "Log!E2": 3.2, "Log!F4": 4.8, "Log!G3": 2, "Log!G4": 3, "Log!H4": 3, "Log!I2": 8.2, "Log!I3": 2 },
      ...{ "Log!I4": 40, "Hidden!A1": 6.4 },
    },
  },
  "by-hand-rich.xlsx": {
    values: {
      ...{ "Log!D2": "#SPILL!", "Log!E2": 3.2, "Log!E4": 3, "Log!F2": "#CALC!", "Log!G2": "#VALUE!" },
      ...{ "Log!H2": 3.2, "Log!H3": 2, "Log!I3": 2 },
    },
  },
  "by-hand-rich-only.xlsx": { values: { "Log!E2": 3.2, "Log!E4": 3 } },
  "by-hand-laden.xlsm": {
    kept: ["Log!C3", "Log!D3"],
    values: {
      ...{ "Log!C2": 3.2, "Log!D2": 3.2, "Log!E2": 3.2, "Log!E3": 52, "Log!F3": 16 },
      ...{ "'Hid & \"quoted\"'!A1": 6.4, "'Hid & \"quoted\"'!B1": 0.46 },
    },
  },
  "by-hand-spelling.xlsx": {
    values: {
      ...{ "Log!C2": 3.2, "Log!D2": "a&b < 20", "Log!E2": 3.2, "Log!E3": 2, "Log!C3": true, "Log!D3": 30 },
      ...{ "Log!B6": "  \ttab A !", "Log!D6": 90001, "Log!F6": 0 },
    },
  },
};

test("each workbook of the corpus is expected, and small", () => {
  expect(corpusWorkbooks).toEqual(Object.keys(expected).sort());
  expect(corpusWorkbooks.length).toBeGreaterThanOrEqual(12);
  for (const name of corpusWorkbooks) expect(statSync(join(corpus, name)).size).toBeLessThan(40_000);
});

/** What a package's part is named or holds when it has the thing. */
const things: Readonly<Record<string, { readonly part?: RegExp; readonly text?: RegExp }>> = {
  charts: { part: /^xl\/charts\/chart/ },
  "sheets that are charts": { part: /^xl\/chartsheets\// },
  pictures: { part: /^xl\/media\// },
  comments: { part: /^xl\/comments/ },
  "threaded comments": { part: /^xl\/threadedComments\// },
  "pivot tables": { part: /^xl\/pivotTables?\// },
  "pivot caches": { part: /^xl\/pivotCache\// },
  macros: { part: /^xl\/vbaProject\.bin$/ },
  "shared strings": { part: /^xl\/sharedStrings\.xml$/, text: /<si>/ },
  "shared formulas": { part: /^xl\/worksheets\//, text: /<f [^>]*t="shared"/ },
  "array formulas": { part: /^xl\/worksheets\//, text: /<f [^>]*t="array"/ },
  "dynamic arrays": { part: /^xl\/worksheets\//, text: /<c [^>]*cm="/ },
  "metadata of dynamic arrays": { part: /^xl\/metadata\.xml$/, text: /XLDAPR/ },
  "dates from 1904": { part: /^xl\/workbook\.xml$/, text: /date1904=["'](1|true)["']/ },
  names: { part: /^xl\/workbook\.xml$/, text: /<definedName [^>]*name="(?!_xlnm)/ },
  tables: { part: /^xl\/tables\/table/ },
  "a second sheet": { part: /^xl\/worksheets\/sheet2\.xml$/ },
  "a list of the order of calculation": { part: /^xl\/calcChain\.xml$/ },
  "links to other workbooks": { part: /^xl\/externalLinks\// },
};

test.each(Object.entries(things))("some workbook of the corpus holds %s", (_, { part = /./, text = /(?:)/ }) => {
  const having = corpusWorkbooks.filter((name) =>
    Object.entries(unzipSync(bytesOf(name))).some(
      ([path, bytes]) => part.test(path) && text.test(Buffer.from(bytes).toString("utf8")),
    ),
  );
  expect(having).not.toEqual([]);
});

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "bimetal-corpus-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const shown = (value: unknown) => (value instanceof CellError ? value.code : value);
/** As a file spells it: errors that it cannot are #VALUE! there. */
const stored = (value: unknown) =>
  value instanceof CellError && /SPILL|CALC/.test(value.code) ? "#VALUE!" : shown(value);

describe.each(corpusWorkbooks)("%s", (name) => {
  const { kept = [], values } = expected[name] as Expected;
  const bytes = bytesOf(name);

  test("is calculated as worked by hand, and what cannot be is named", async () => {
    const grid = await calculate(openWorkbook(bytes, catalogue).book, catalogue);
    const at = (address: string) => shown(grid.valueAt(readPlace(address) ?? { sheet: "", row: -1, column: -1 }));
    for (const [address, value] of Object.entries(values))
      if (typeof value === "number") expect([address, at(address)]).toEqual([address, expect.closeTo(value, 12)]);
      else expect([address, at(address)]).toEqual([address, value]);
    expect(grid.kept.map(({ place }) => sayPlace(place))).toEqual(kept);
    grid.close();
  });

  test("recalculated, differs in the values of recalculated cells only, and the second time in nothing", async () => {
    const [input, first, second] = ["in", "out", "again"].map((word) => join(folder, word + extname(name)));
    if (!input || !first || !second) throw new Error("No paths.");
    copyFileSync(join(corpus, name), input);
    utimesSync(input, 1e9, 1e9);

    const { out, code } = await recalculateWorkbook([input, "--out", first], catalogue);
    expect([code, out]).toEqual([expect.any(Number), expect.stringMatching(/cells? (has|have) a new value\.\n$/)]);
    expect(code).toBeLessThanOrEqual(1);
    expect(readFileSync(input).equals(bytes)).toBe(true);
    expect(statSync(input).mtimeMs).toBe(1e12);

    const after = new Uint8Array(readFileSync(first));
    expect(surprises(bytes, after, kept)).toEqual([]);
    const again = await recalculateWorkbook([first, "--out", second], catalogue);
    expect(again.out).toContain("0 cells have a new value.");
    expect(readFileSync(second).equals(after)).toBe(true);

    // What is read from the copy is what was calculated: its formulas' values, and in spills those of all cells.
    const { book } = openWorkbook(bytes, catalogue);
    const grid = await calculate(book, catalogue);
    const copy = openWorkbook(after, catalogue).book;
    let compared = 0;
    for (const [place, sheet] of copy.sheets.entries())
      for (const cell of sheet.cells) {
        const calculated = grid.valueAt({ sheet: sheet.name, row: cell.row, column: cell.column });
        const before = book.sheets[place]?.cells.find(({ row, column }) => row === cell.row && column === cell.column);
        const address = sayPlace({ sheet: sheet.name, ...cell });
        if (before?.formula === undefined && !grid.spillAt({ sheet: sheet.name, ...cell })) continue;
        if (kept.includes(address)) expect([address, cell.value]).toEqual([address, before?.value]);
        if (kept.includes(address)) continue;
        expect([address, shown(cell.value)]).toEqual([address, stored(calculated)]);
        compared += 1;
      }
    expect(compared).toBeGreaterThanOrEqual(Object.keys(values).length - 1);
    grid.close();
  });

  test("its copy of values lacks the formulas of ours and their marks, and differs from the other copy in nothing else", async () => {
    const [formulas, shownValues] = ["out", "shown"].map((word) => join(folder, word + extname(name)));
    if (!formulas || !shownValues) throw new Error("No paths.");
    await recalculateWorkbook([join(corpus, name), "--out", formulas, "--values", shownValues], catalogue);
    const [first, second] = [formulas, shownValues].map((path) => new Uint8Array(readFileSync(path)));
    if (!first || !second) throw new Error("No copies.");
    const calls = callsOfOurs(bytes);
    expect(calls.length).toBeGreaterThan(0);
    const compared = compareValues(bytes, first, second);
    expect(compared.surprises).toEqual([]);
    // H3 reads the whole answer of one of ours.
    const readers = name.startsWith("by-xlsxwriter") ? ["Log!H3"] : [];
    expect([...compared.gone].sort()).toEqual([...calls, ...readers].sort());
    expect(callsOfOurs(second)).toEqual([]);

    // The second time there is nothing of ours left to take.
    const again = await recalculateWorkbook([shownValues, "--values", join(folder, `last${extname(name)}`)], catalogue);
    expect(again.out).toContain(" 0 with functions of BIMETAL.");
    expect(readFileSync(join(folder, `last${extname(name)}`)).equals(second)).toBe(true);
  });
});

describe("the comparison itself finds what it looks for", () => {
  const before = bytesOf("by-xlsxwriter.xlsx");
  const sheet = "xl/worksheets/sheet1.xml";
  const changed = (part: string, from: string | RegExp, to: string): Uint8Array => {
    const parts = unzipSync(before);
    const text = Buffer.from(parts[part] ?? []).toString("utf8");
    if (text.replace(from, to) === text) throw new Error("Nothing was planted.");
    return zipSync({ ...parts, [part]: new TextEncoder().encode(text.replace(from, to)) });
  };

  test.each<[string, string, string | RegExp, string, RegExp]>([
    ["a typed value", sheet, "<v>0.16</v>", "<v>0.17</v>", /B2 is not calculated/],
    ["a looks number", sheet, '<c r="K7">', '<c r="K7" s="1">', /K7, its attributes/],
    ["a formula", sheet, "SUM(Trials[drop])", "SUM(Trials[current])", /K7, its formula/],
    ["the tag of a row", sheet, '<row r="3" spans', '<row r="3" ht="9" spans', /the tag of row 3/],
    ["a row that goes", sheet, /<row r="9".*?<\/row>/, "", /row 9 is gone/],
    ["a cell that goes", sheet, '<c r="B2"><v>0.16</v></c>', "", /B2 is gone/],
    ["a cell that comes", sheet, '<c r="B2">', '<c r="AB2"><v>1</v></c><c r="B2">', /AB2 is new/],
    ["a remark between cells", sheet, '<c r="B2">', '<!-- x --><c r="B2">', /between the cells/],
    ["what stands after the rows", sheet, 'type="colorScale"', 'type="dataBar"', /outside the rows/],
    ["a mark that comes", sheet, '<c r="K7">', '<c r="K7" cm="1">', /K7, its mark/],
    ["another part", "xl/charts/chart1.xml", "scatter", "bubble", /chart1\.xml differs/],
    ["the metadata", "xl/metadata.xml", 'fCollapsed="0"', 'fCollapsed="1"', /metadata\.xml differs/],
  ])("%s", (_, part, from, to, sentence) => {
    expect(surprises(before, changed(part, from, to), [])).toEqual([expect.stringMatching(sentence)]);
  });

  test.each<[string, string | RegExp, string, RegExp]>([
    ["a value", /<c r="F4"><v>3<\/v>/, '<c r="F4"><v>4</v>', /F4: /],
    ["a typed value", "<v>0.16</v>", "<v>0.17</v>", /B2: /],
    ["looks", '<c r="F2"', '<c r="F2" s="1"', /F2: /],
    ["a mark that stays", '<c r="F2"', '<c r="F2" cm="1"', /F2: /],
    ["another value in a formula's place", /<f>SUM\(Trials\[drop\]\)<\/f><v>[^<]*/, "<v>0.8", /K7: /],
    ["a cell that goes", '<c r="B2"><v>0.16</v></c>', "", /row 2 has other cells/],
    ["a row that goes", /<row r="9".*?<\/row>/, "", /other rows/],
    ["what stands after the rows", 'type="colorScale"', 'type="dataBar"', /outside the rows/],
  ])("in a copy of values: %s", async (_, from, to, sentence) => {
    const paths = ["out.xlsx", "shown.xlsx"].map((file) => join(folder, file)) as [string, string];
    const words = [join(corpus, "by-xlsxwriter.xlsx"), "--out", paths[0], "--values", paths[1]];
    await recalculateWorkbook(words, catalogue);
    const [formulas, shownValues] = paths.map((path) => new Uint8Array(readFileSync(path))) as [Uint8Array, Uint8Array];
    const parts = unzipSync(shownValues);
    const text = Buffer.from(parts[sheet] ?? []).toString("utf8");
    expect(text.replace(from, to)).not.toBe(text);
    const planted = zipSync({ ...parts, [sheet]: new TextEncoder().encode(text.replace(from, to)) });
    const found = compareValues(before, formulas, planted).surprises;
    expect(found).toEqual([expect.stringMatching(sentence)]);
    const other = zipSync({ ...parts, "xl/styles.xml": new Uint8Array(), "docProps/new.xml": new Uint8Array([60]) });
    expect(compareValues(before, formulas, other).surprises).toEqual([
      "xl/styles.xml differs",
      "docProps/new.xml differs",
    ]);
  });

  test("a part that goes, and one that comes", () => {
    const { "docProps/app.xml": gone, ...rest } = unzipSync(before);
    if (!gone) throw new Error("There is no such part.");
    const after = zipSync({ ...rest, "docProps/new.xml": gone });
    expect(surprises(before, after, [])).toEqual(["docProps/app.xml differs", "docProps/new.xml differs"]);
  });

  test("a value of a kept cell", () => {
    expect(surprises(before, changed(sheet, /(<c r="K8">.*?<v>)0/, "$15"), ["Log!K8"])).toEqual([
      expect.stringMatching(/K8 is not calculated/),
    ]);
    expect(surprises(before, changed(sheet, /(<c r="K8">.*?<v>)0/, "$15"), [])).toEqual([]);
  });
});
