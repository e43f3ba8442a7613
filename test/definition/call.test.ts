import fc from "fast-check";
import * as z from "zod/mini";
import { BadInput } from "../../src/definition/bad-input";
import { call } from "../../src/definition/call";
import { type Argument, type Cell, CellError } from "../../src/definition/cells";
import { define } from "../../src/definition/define";
import { blankMeans, column, label, list, optional, quantity, word } from "../../src/definition/parameter";
import { NoAnswer } from "../../src/metrology/no-answer";

const texts = { summary: "", sources: [], cautions: [], examples: [], explain: () => ({ steps: [], answer: "" }) };
const result = (name: string) => ({ name, unit: "" as const, meaning: name });

const sum = define({
  ...texts,
  name: "TEST.SUM",
  answers: "row",
  results: [result("sum"), result("word")],
  parameters: {
    current: quantity("A", "a current"),
    outcome: optional(word("what came of it", ["tripped", "held"], { ifBlank: "no outcome." }), "tripped"),
    preload: optional(blankMeans(quantity("A", "carried before", z.number().check(z.nonnegative())), 0), "cold"),
    ambient: optional(
      quantity("°C", "air", z.number().check(z.minimum(-40), z.maximum(60)), { hint: "in °C; was °F meant?" }),
      "20 °C",
    ),
  },
  calculate: ({ current, outcome = "tripped", preload = 0, ambient = 20 }) => {
    if (current === 13) throw new NoAnswer("current: 13 A is in no table.");
    return [current + preload + ambient, outcome];
  },
});

const messages = (args: Argument[], definition = sum) =>
  call(definition, args).map(([first]) => (first instanceof Error ? `${first.name}: ${first.message}` : first));

describe("one cell", () => {
  test("a number is taken, what is left out gets its default", () => {
    expect(call(sum, [5])).toEqual([[25, "tripped"]]);
    expect(call(sum, [5, undefined, 2])).toEqual([[27, "tripped"]]);
    expect(call(sum, [[[5]], [["HELD "]], [[2]], [[-3]]])).toEqual([[4, "held"]]);
  });

  test.each<[string, Argument[], string]>([
    ["nothing", [], "current is missing."],
    ["a blank cell", [[[null]]], "current is blank."],
    [
      "a blank that a host hands over as 0",
      [[[0]]],
      "current: more than 0 A is wanted, not 0 A (a blank cell counts as 0).",
    ],
    ["text", ["x"], 'current: a number in A is wanted, not the text "x".'],
    [
      "text that looks like a number",
      ["20"],
      'current: a number in A is wanted, not the text "20", which only looks like a number: type it again as one.',
    ],
    [
      "a number with its unit",
      ["25 A"],
      'current: a number in A is wanted, not the text "25 A": type the number alone, in A.',
    ],
    [
      "millivolts beside a number",
      ["61 mV"],
      'current: a number in A is wanted, not the text "61 mV": type the number alone, in A.',
    ],
    ["a clock where no time is asked", ["1:35"], 'current: a number in A is wanted, not the text "1:35".'],
    [
      "a word without quotes",
      [5, new CellError("#NAME?")],
      'outcome: #NAME? came in; a word typed into a formula stands in quotes: "tripped".',
    ],
    ["a negative number", [-5], "current: more than 0 A is wanted, not -5 A."],
    ["a boolean", [true], "current: a number in A is wanted, not TRUE."],
    ["an error cell", [new CellError("#N/A")], "current: the cell holds #N/A; mend that cell first."],
    ["a number nobody measures", [1e300], "current: 1e+300 A is beyond any measurement (1e-12 to 1e12)."],
    ["an unknown word", [5, "broke"], 'outcome: the text "broke" is not known; known are "tripped", "held".'],
    ["a blank word", [5, [[null]]], "no outcome."],
    ["a blank word handed over as 0", [5, [[0]]], "no outcome."],
    [
      "a temperature in °F",
      [5, undefined, undefined, 104],
      "ambient: at most 60 °C is wanted, not 104 °C; in °C; was °F meant?",
    ],
    ["too many arguments", [5, "held", 1, 20, 9], "TEST.SUM takes at most 4 arguments, not 5."],
    ["an empty range", [[]], "current: the range is empty."],
  ])("%s is refused with a sentence", (_, args, sentence) => {
    expect(messages(args)).toEqual([`BadInput: ${sentence}`]);
  });

  test("a question without an answer says so in every cell of its row", () => {
    const [row] = call(sum, [13]);
    expect(row).toHaveLength(2);
    for (const cell of row ?? []) expect(cell).toBeInstanceOf(NoAnswer);
  });
});

describe("ranges", () => {
  const down = (...cells: Cell[]) => cells.map((cell) => [cell]);

  test("a column is answered row by row, one cell stands for all rows", () => {
    expect(call(sum, [down(1, 2), "held", down(10, 20)])).toEqual([
      [31, "held"],
      [42, "held"],
    ]);
  });

  test("one bad row leaves the others standing", () => {
    expect(messages([down(30, "x", 13, 40)])).toEqual([
      50,
      'BadInput: current: a number in A is wanted, not the text "x".',
      "NoAnswer: current: 13 A is in no table.",
      60,
    ]);
  });

  test("a row that is blank in every range is blank, whichever way its host hands blanks over", () => {
    expect(call(sum, [down(1, null, 0, ""), down("held", null, 0, null)])).toEqual([
      [21, "held"],
      ["", ""],
      ["", ""],
      ["", ""],
    ]);
  });

  test("a missing value beside a current is refused, unless blank has a meaning of its own", () => {
    expect(messages([down(1, 2), down("held", null)])).toEqual([21, "BadInput: no outcome."]);
    expect(messages([down(1, 2), "held", down(5, null)])).toEqual([26, 22]);
    expect(messages([down(1, 2), "held", 0, down(5, null)])).toEqual([6, "BadInput: ambient is blank."]);
  });

  test("a range that lies across is answered across, results going down", () => {
    expect(call(sum, [[[1, 2, 3]]])).toEqual([
      [21, 22, 23],
      ["tripped", "tripped", "tripped"],
    ]);
  });

  test("shapes that do not fit are one refusal that names both", () => {
    expect(messages([down(1, 2), down("held", "held", "held")])).toEqual([
      "BadInput: The ranges do not fit: current has 2 rows × 1 column, outcome has 3 rows × 1 column.",
    ]);
    expect(
      messages([
        [
          [1, 2],
          [3, 4],
        ],
      ]),
    ).toEqual(["BadInput: current: one column or one row is wanted, not 2 rows × 2 columns."]);
  });

  test("a single cell and the same cell in a column are answered and refused alike", () => {
    const cell = fc.oneof(
      fc.double(),
      fc.constantFrom<Cell>("x", "20", "held", true, null, 0, 13, -1, new CellError("#REF!")),
    );
    fc.assert(
      fc.property(cell, cell, cell, (current, outcome, ambient) => {
        // A second row keeps the column from being one cell; a 7 beside it keeps its row from being blank.
        const alone = messages([current, outcome, 7, ambient]);
        const [first] = messages([down(current, 1), down(outcome, "held"), down(7, 7), down(ambient, 20)]);
        // A single blank in a formula is an argument left out or a blank cell; hosts pass the cell as a range of one.
        expect(first).toEqual(alone[0]);
      }),
      { numRuns: 500 },
    );
  });
});

test("numbers are taken by their limits exactly where the schema takes them", () => {
  const schemas = [
    z.number().check(z.positive()),
    z.number().check(z.nonnegative()),
    z.number().check(z.minimum(-40), z.maximum(60)),
    z.number().check(z.gt(1), z.lt(2)),
    z.int().check(z.minimum(1), z.maximum(4)),
    z.number().check(z.minimum(1), z.multipleOf(0.5)),
    z.number().check(z.refine((number) => number !== 2)),
  ];
  const numbers = fc.oneof(
    fc.double({ min: -1e12, max: 1e12, noNaN: true }),
    fc.integer({ min: -50, max: 70 }),
    fc.constantFrom(0, -0, 1, 2, 60, -40, 1e-12, 1.5),
  );
  fc.assert(
    fc.property(fc.constantFrom(...schemas), numbers, (schema, number) => {
      fc.pre(number === 0 || Math.abs(number) >= 1e-12);
      const read = () => quantity("A", "a number", schema).read(number, "it");
      if (schema.safeParse(number).success) expect(read()).toBe(number);
      else expect(read).toThrow(BadInput);
    }),
    { numRuns: 2000 },
  );
});

describe("lists taken whole", () => {
  const board = define({
    ...texts,
    name: "TEST.BOARD",
    answers: "row",
    results: [result("total")],
    parameters: {
      loads: column(quantity("A", "loads", z.number().check(z.nonnegative()))),
      poles: optional(column(quantity("", "poles", z.number().check(z.positive()))), "1"),
      readings: optional(list(quantity("A", "readings")), "none"),
    },
    calculate: ({ loads, poles, readings = [] }) => [
      loads.reduce((total, load, i) => total + load * (poles?.[i] ?? 1), 0) + 1000 * readings.length,
    ],
  });
  const down = (...cells: Cell[]) => cells.map((cell) => [cell]);

  test("columns of one call have one length, and one cell stands for all rows", () => {
    expect(call(board, [down(1, 2, 3), 2])).toEqual([[12]]);
    expect(messages([down(1, 2, 3), down(1, 2)], board)).toEqual([
      "BadInput: The ranges do not fit: loads has 3 rows × 1 column, poles has 2 rows × 1 column.",
    ]);
  });

  test("a row blank in every column is no row; a blank beside a number is 0", () => {
    expect(call(board, [down(1, null, 3), down(2, 0, 4)])).toEqual([[14]]);
    expect(call(board, [down(1, null, 3), down(2, 1, 4)])).toEqual([[14]]);
  });

  test("one bad cell refuses the whole and names its row", () => {
    expect(messages([down(1, -2, 3)], board)).toEqual(["BadInput: loads, row 2: at least 0 A is wanted, not -2 A."]);
    expect(messages([down(null, null)], board)).toEqual(["BadInput: loads: all rows are blank."]);
  });

  test("a list of its own length may be any block of cells, blanks passed over", () => {
    expect(
      call(board, [
        1,
        1,
        [
          [1, 2],
          [3, null],
        ],
      ]),
    ).toEqual([[3001]]);
  });
});

test("a defect is no refusal: it is thrown on", () => {
  const broken = define({
    ...texts,
    name: "TEST.BROKEN",
    answers: "row",
    results: [result("x")],
    parameters: { name: label("a name") },
    calculate: () => {
      throw new TypeError("defect");
    },
  });
  expect(() => call(broken, ["x"])).toThrow(TypeError);
});
