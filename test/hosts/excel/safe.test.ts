import type { AnyDefinition } from "../../../src/definition/define";
import { define } from "../../../src/definition/define";
import { Memory } from "../../../src/definition/memory";
import { column, optional, quantity } from "../../../src/definition/parameter";
import { catalogue } from "../../../src/functions";
import contactWatts from "../../../src/functions/contact.watts";
import explain from "../../../src/functions/explain";
import { associate } from "../../../src/hosts/excel/associate";
import { NoAnswer } from "../../../src/metrology/no-answer";
import { type Call, errorCell, type Reply } from "./excel-host";
import { type ExcelRuntime, startExcelRuntime } from "./runtime";

// What no sheet function should give, given by functions made for it, in one batch with a sound one.

const circle: { self?: unknown } = {};
circle.self = circle;

const giving = (name: string, calculate: () => unknown): AnyDefinition =>
  define({
    name,
    summary: "Gives what a cell cannot take.",
    parameters: {
      first: optional(quantity("A", "any current"), "nothing"),
      second: optional(column(quantity("V", "any voltages")), "nothing"),
    },
    results: [
      { name: "one", unit: "", meaning: "the first cell" },
      { name: "two", unit: "", meaning: "the second cell" },
    ],
    answers: "rows",
    sources: [],
    cautions: [],
    examples: [],
    calculate: calculate as never,
    explain: () => ({ steps: [], answer: "" }),
  });

const odd = [
  giving("GIVES.NAN", () => [[1, Number.NaN]]),
  giving("GIVES.INFINITY", () => [[Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]]),
  giving("GIVES.NOTHING", () => [[null, undefined]]),
  giving("GIVES.BIGINT", () => [[10n, true]]),
  giving("GIVES.CIRCLE", () => [[circle, Symbol("x")]]),
  giving("GIVES.LONG", () => [["x".repeat(32_767), "x".repeat(32_768)]]),
  giving("GIVES.RAGGED", () => [[1, 2], [3]]),
  giving("GIVES.EMPTY", () => []),
  giving("GIVES.NULL", () => null),
  giving("THROWS.DEFECT", () => {
    throw new RangeError("the root is not bracketed");
  }),
  giving("THROWS.TEXT", () => {
    throw "a text";
  }),
  giving("THROWS.NOANSWER", () => {
    throw new NoAnswer("a 160 A breaker is beyond the table, which ends at 125 A.");
  }),
];

const calls: Call[] = [
  ...odd.map(({ name }) => ({ id: name, handed: [null, null] })),
  { id: "CONTACT.WATTS", handed: [[[20]], [[0.16]]], address: "'Bench log'!$C$4" },
  { id: "CONTACT.WATTS", handed: [[[20, 25]], [[0.16, errorCell("#N/A")]]], address: "Log!D5" },
  { id: "CONTACT.WATTS", handed: [[[20]], [[0.16]], null] },
  { id: "CONTACT.WATTS", handed: [[[20]], [[0.16]], [[1]]] },
  { id: "CONTACT.WATTS", handed: [[[20]]] },
  { id: "EXPLAIN", handed: [[["contact.watts"]], [[[20]], [[0.16]]]], address: "Log!H1" },
  { id: "EXPLAIN", handed: [[["contact.watts"]], null] },
  { id: "UNGUARDED", handed: [] },
];

const memory = new Memory();
let runtime: ExcelRuntime;
let replies: readonly Reply[];

beforeAll(async () => {
  runtime = startExcelRuntime();
  Object.assign(globalThis, { CustomFunctions: runtime.globals.CustomFunctions });
  associate([...odd, contactWatts, explain(catalogue.filter(({ name }) => name !== "EXPLAIN"))], memory);
  runtime.globals.CustomFunctions.associate("UNGUARDED", () => [
    [1, Number.NaN, Number.POSITIVE_INFINITY, null, undefined],
  ]);
  replies = await runtime.host.callAll(calls);
});
afterAll(() => runtime.close());

const answerOf = (id: string, which = 0): unknown => replies[calls.findIndex((call) => call.id === id) + which]?.value;

const defect = (words: RegExp) => expect.objectContaining({ code: "#VALUE!", message: expect.stringMatching(words) });

test("unguarded, Microsoft's runtime turns what is no number into null, which a cell shows as 0", () => {
  expect(answerOf("UNGUARDED")).toEqual([[1, null, null, null, null]]);
});

test.each([
  ["GIVES.NAN", [[1, defect(/^defect: GIVES\.NAN gave NaN for a number$/)]]],
  ["GIVES.INFINITY", [[defect(/gave Infinity/), defect(/gave -Infinity/)]]],
  ["GIVES.NOTHING", [["", ""]]],
  ["GIVES.BIGINT", [[defect(/of type bigint/), true]]],
  ["GIVES.CIRCLE", [[defect(/of type object/), defect(/of type symbol/)]]],
  ["GIVES.LONG", [["x".repeat(32_767), defect(/32768 characters/)]]],
  [
    "GIVES.RAGGED",
    [
      [1, 2],
      [3, defect(/rows of different lengths/)],
    ],
  ],
  ["GIVES.EMPTY", [[defect(/gave no cells/), defect(/gave no cells/)]]],
  ["GIVES.NULL", [[defect(/^defect: GIVES\.NULL failed/), defect(/^defect/)]]],
  ["THROWS.DEFECT", [[defect(/^defect: THROWS\.DEFECT failed: the root is not bracketed$/), defect(/^defect/)]]],
  ["THROWS.TEXT", [[defect(/^defect: THROWS\.TEXT failed: a text$/), defect(/^defect/)]]],
])("%s is shown in its own cells and nowhere else", (id, expected) => {
  expect(answerOf(id)).toEqual(expected);
});

test("a question without an answer is #N/A with its sentence, in each of its cells", () => {
  const cell = expect.objectContaining({ code: "#N/A", message: expect.stringMatching(/ends at 125 A/) });
  expect(answerOf("THROWS.NOANSWER")).toEqual([[cell, cell]]);
});

test("the cells of the same batch keep their answers", () => {
  expect(answerOf("CONTACT.WATTS")).toEqual([[3.2]]);
});

test("a batch that takes long is put off, not cut short", async () => {
  const slow = giving("TAKES.LONG", () => {
    const end = performance.now() + 300;
    while (performance.now() < end);
    return [[1, 2]];
  });
  associate([slow], memory);
  const long = await runtime.host.callAll(
    Array.from({ length: 6 }, () => ({ id: "TAKES.LONG", handed: [null, null] })),
  );
  expect(long.map(({ value }) => value)).toEqual(Array.from({ length: 6 }, () => [[1, 2]]));
});

test("an error in one cell of a range costs that cell's answer only", () => {
  expect(answerOf("CONTACT.WATTS", 1)).toEqual([[3.2, defect(/^drop: the cell holds #N\/A/)]]);
});

test("an argument that only a newer list of parameters has is passed over while it is left out, and refused when it is given", () => {
  expect(answerOf("CONTACT.WATTS", 2)).toEqual([[3.2]]);
  expect(answerOf("CONTACT.WATTS", 3)).toEqual([[defect(/takes at most 2 arguments, not 3/)]]);
});

test("an argument that an older list of parameters lacks counts as left out", () => {
  expect(answerOf("CONTACT.WATTS", 4)).toEqual([[defect(/^drop is missing/)]]);
});

test("a repeating parameter is spread over the places it stands for", () => {
  expect(answerOf("EXPLAIN")).toContainEqual(["result", "heat: 3.2 W"]);
  expect(answerOf("EXPLAIN", 1)).toContainEqual(["refused", "current is missing."]);
});

test("a call is remembered by its cell, however Excel writes its address, with the cells it was given", () => {
  expect(memory.recall("Bench log!C4", contactWatts)?.args).toEqual([[[20]], [[0.16]]]);
  expect(memory.recall("Log!D5", contactWatts)?.args[0]).toEqual([[20, 25]]);
});
