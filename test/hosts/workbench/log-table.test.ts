import { CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import type { Book } from "../../../src/hosts/engine/book";
import { calculate } from "../../../src/hosts/engine/calculate";
import { logTable } from "../../../src/hosts/workbench/log-table";
import { printKept, printTable } from "../../../src/hosts/workbench/print-table";
import { cellsFrom } from "../engine/cells-from";

const log = cellsFrom([
  ["Fernhollow Tool Library, the bench"],
  ["Remarks", "Time, s", "Breaker", "Time constant, s", "Current, A", "Outcome", "Verdict", "Why"],
  ["", 20, "FT-01", 9, 51, "tripped", '=BIMETAL.TRIP.VERDICT(E3:E5,B3:B5,20,"C",F3:F5)'],
  ["", 61, "FT-02", 9, 51, "tripped"],
  ["", 20, "FT-03", 9, "51,0", "tripped"],
]);
const book: Book = {
  sheets: [
    { name: "Breakers", cells: cellsFrom([["Breaker", "a", "b", "c", "d", "e", "f", "g", "h"]]) },
    { name: "Log", cells: log },
  ],
};
const tableOf = async (of: Book) => logTable(of, await calculate(of, catalogue));

test("the log is found by its headings, wherever it stands, and its telling columns in their usual order", async () => {
  const table = await tableOf(book);
  expect(table?.sheet).toBe("Log");
  expect(table?.headings).toEqual(["Breaker", "Current, A", "Time, s", "Outcome", "Verdict"]);
  // IEC 60898-1 Table 7, test c: 51 A is 2.55 × 20 A, not within 1 s and within 60 s.
  expect(table?.rows).toEqual([
    ["FT-01", "51", "20", "tripped", "in range"],
    ["FT-02", "51", "61", "tripped", "late"],
    ["FT-03", "51,0", "20", "tripped", "#VALUE!"],
  ]);
});

test("each refused row has its sentence below the table once", async () => {
  expect((await tableOf(book))?.refusals).toEqual([
    'G5: current: a number in A is wanted, not the text "51,0", which only looks like a number: type it again as one.',
  ]);
});

test("a workbook without such headings shows its first columns", async () => {
  const plain: Book = {
    sheets: [
      {
        name: "S",
        cells: cellsFrom([
          ["way", "load"],
          ["kiln", 1 / 3],
        ]),
      },
    ],
  };
  const table = await tableOf(plain);
  expect([table?.headings, table?.rows]).toEqual([["way", "load"], [["kiln", "0.3333"]]]);
});

test("a workbook without headings has no table", async () => {
  expect(await tableOf({ sheets: [{ name: "S", cells: cellsFrom([[1, 2]]) }] })).toBeUndefined();
});

test("in print numbers stand to the right, texts to the left, and long texts are shortened", () => {
  const printed = printTable({
    sheet: "Log",
    headings: ["what", "s"],
    rows: [
      ["a", "1"],
      ["a sentence that goes on and on for ever", "3600"],
    ],
    isNumeric: [false, true],
    refusals: ["B2: no."],
  });
  expect(printed.split("\n")).toEqual([
    "what                                   s",
    "──────────────────────────────────  ────",
    "a                                      1",
    "a sentence that goes on and on fo…  3600",
    "",
    "B2: no.",
  ]);
});

test("of a very long log the first rows and refusals are printed, and how many more there are", () => {
  const printed = printTable({
    sheet: "Log",
    headings: ["trial"],
    rows: Array.from({ length: 200_000 }, (_, i) => [String(i + 1)]),
    isNumeric: [true],
    refusals: Array.from({ length: 70 }, (_, i) => `A${i + 2}: current is blank.`),
  }).split("\n");
  expect(printed.slice(0, 3).map((line) => line.trim())).toEqual(["trial", "─────", "1"]);
  expect(printed[302]).toBe("… and 199700 more rows");
  expect(printed.at(-1)).toBe("… and 10 more refusals");
});

test("nothing that is printed is obeyed by a terminal, nor run by a spreadsheet into which it is copied", async () => {
  const hostile: Book = {
    sheets: [
      {
        name: "S",
        cells: cellsFrom([
          ["@way", "load, A", "heat, W"],
          ["+cmd|' /C calc'!A0", -5, "=BIMETAL.CONTACT.WATTS(A2,B2)"],
          [" =1+1", "\u001b]0;owned\u0007", '="="&"1+1"'],
          ["\u202edliw", "-", new CellError("=1+1")],
        ]),
      },
    ],
  };
  const table = await tableOf(hostile);
  expect(table?.headings[0]).toBe("'@way");
  expect(table?.rows).toEqual([
    ["'+cmd|' /C calc'!A0", "-5", "#VALUE!"],
    ["' =1+1", "\u001b]0;owned\u0007", "'=1+1"],
    ["\u202edliw", "'-", "'=1+1"],
  ]);
  if (!table) throw new Error("There is no table.");
  const kept = { place: { sheet: "S", row: 0, column: 0 }, formula: '=NOSUCH("\u001b[2J")', why: "It is not known." };
  const printed = [printTable(table), ...printKept(Array.from({ length: 70 }, () => kept))].join("\n");
  expect(printed).toContain('S!A1 keeps the value it had: It is not known. =NOSUCH("\ufffd[2J")');
  expect(printed.split("\n").at(-1)).toBe("… and 10 more formulas keep the values they had");
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must not come.
  expect(printed).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
  expect(printed).toContain("C2: current: a number in A is wanted");
});
