import * as z from "zod/mini";
import { BadInput } from "../../../src/definition/bad-input";
import { CellError, type Range } from "../../../src/definition/cells";
import { define } from "../../../src/definition/define";
import { Memory } from "../../../src/definition/memory";
import { optional, quantity } from "../../../src/definition/parameter";
import contactWatts from "../../../src/functions/contact.watts";
import { type Calculated, calculate } from "../../../src/hosts/engine/calculate";
import { descriptionsFor } from "../../../src/hosts/engine/functions";
import { readPlace, sayPlace } from "../../../src/hosts/engine/place";
import { NoAnswer } from "../../../src/metrology/no-answer";
import { cellsFrom } from "./cells-from";

const base = { summary: "A function for this test.", sources: [], cautions: [], examples: [] } as const;
const explain = () => ({ steps: [], answer: "" });
const any = {
  spread: "raw",
  schema: z.unknown(),
  unit: "",
  meaning: "anything",
  read: (cell: unknown) => cell,
} as const;

/** Says what it was handed. */
const seen: unknown[][] = [];
const told = define({
  ...base,
  explain,
  name: "TEST.TOLD",
  parameters: { first: optional(any, "nothing"), second: optional(any, "nothing"), third: optional(any, "nothing") },
  results: [{ name: "count", unit: "", meaning: "how many arguments came" }],
  answers: "row",
  calculate: ({ first, second, third }) => {
    seen.push([first, second, third]);
    return [seen.length];
  },
});

/** Doubles; refuses negative numbers, has no answer above 100, and is broken at 13. */
const twice = define({
  ...base,
  explain,
  name: "TEST.TWICE",
  parameters: { number: quantity("A", "a number", z.number()) },
  results: [
    { name: "double", unit: "A", meaning: "twice the number" },
    { name: "word", unit: "", meaning: "a word" },
  ],
  answers: "row",
  calculate: ({ number }) => {
    if (number < 0) throw new BadInput(`number: at least 0 A is wanted, not ${number} A.`);
    if (number > 100) throw new NoAnswer(`The table ends at 100 A; ${number} A is beyond it.`);
    return number === 13 ? [Number.NaN, "broken"] : [number * 2, "fine"];
  },
});

const at = (address: string) => readPlace(address, "Bench log") ?? { sheet: "", row: -1, column: -1 };

describe("a call from a cell of the engine", () => {
  const memory = new Memory();
  let grid: Calculated;
  beforeAll(async () => {
    grid = await calculate(
      {
        sheets: [
          {
            name: "Bench log",
            cells: [
              ...cellsFrom([[1], [null], ["a"], [true], [new CellError("#N/A")], ["42"]]),
              ...cellsFrom([[5], [-1], [200], [null], [13]], { column: 1 }),
              ...cellsFrom([["=BIMETAL.TEST.TOLD(A2,,A1:A6)"]], { column: 3 }),
              ...cellsFrom([["=BIMETAL.TEST.TWICE(B1:B4)"]], { column: 5 }),
              ...cellsFrom([["=BIMETAL.TEST.TWICE(B5)"]], { row: 8, column: 5 }),
              ...cellsFrom([['=IFERROR(BIMETAL.TEST.TWICE(-1),"none")'], ["=bimetal.test.twice(4)"]], { row: 12 }),
              ...cellsFrom([["=BIMETAL.TEST.TWICE()"], ["=BIMETAL.TEST.TWICE(1,2)"]], { row: 16, column: 5 }),
              ...cellsFrom([["=BIMETAL.TEST.TWICE(4)"], ["blocks"]], { row: 20, column: 0 }),
              ...cellsFrom([["blocks"]], { row: 20, column: 1 }),
              ...cellsFrom([["=F2"], ["=INDEX(F1#,1,1)+1"]], { row: 24 }),
              ...cellsFrom([["=BIMETAL.CONTACT.WATTS(B1,0.5)"]], { row: 28 }),
            ],
          },
        ],
      },
      [told, twice, contactWatts],
      { memory },
    );
  });

  test("hands over blanks as null, what was left out as undefined, and each kind of cell as it is", () => {
    const range: Range = [[1], [null], ["a"], [true], [new CellError("#N/A")], ["42"]];
    expect(seen.at(-1)).toEqual([null, undefined, range]);
  });

  test("spills a row per row: answers, refusals with their sentences, and blanks", () => {
    expect(grid.spillAt(at("G4"))).toEqual({ sheet: "Bench log", row: 0, column: 5, rows: 4, columns: 2 });
    expect([grid.valueAt(at("F1")), grid.valueAt(at("G1"))]).toEqual([10, "fine"]);
    expect(grid.valueAt(at("F2"))).toEqual(new CellError("#VALUE!"));
    expect(grid.messageAt(at("G2"))).toBe("number: at least 0 A is wanted, not -1 A.");
    expect(grid.valueAt(at("F3"))).toEqual(new CellError("#N/A"));
    expect(grid.messageAt(at("F3"))).toBe("The table ends at 100 A; 200 A is beyond it.");
    expect([grid.valueAt(at("F4")), grid.valueAt(at("G4"))]).toEqual(["", ""]);
    expect(grid.formulaAt(at("G4"))).toBe("=BIMETAL.TEST.TWICE(B1:B4)");
  });

  test("never shows a number that is none: the cell and the caller are told of the defect", () => {
    expect(grid.valueAt(at("F9"))).toEqual(new CellError("#VALUE!"));
    expect(grid.messageAt(at("F9"))).toMatch(/BIMETAL\.TEST\.TWICE has a defect, please report it: .*NaN/);
    expect(grid.defects.map(({ place }) => sayPlace(place))).toContain("'Bench log'!F9");
  });

  test("works inside other functions and in any case", () => {
    expect(grid.valueAt(at("A13"))).toBe("none");
    expect(grid.valueAt(at("A14"))).toBe(8);
  });

  test("answers a wrong number of arguments with our own sentence", () => {
    expect(grid.messageAt(at("F17"))).toBe("number is missing.");
    expect(grid.messageAt(at("F18"))).toBe("TEST.TWICE takes at most 1 arguments, not 2.");
  });

  test("shows #SPILL! where the answer has no room, and no extent", () => {
    expect(grid.valueAt(at("A21"))).toEqual(new CellError("#SPILL!"));
    expect(grid.spillAt(at("A21"))).toBeUndefined();
    expect(grid.valueAt(at("B21"))).toBe("blocks");
  });

  test("an error that another cell repeats carries no sentence of its own", () => {
    expect(grid.valueAt(at("A25"))).toEqual(new CellError("#VALUE!"));
    expect(grid.messageAt(at("A25"))).toBeUndefined();
    expect(grid.valueAt(at("A26"))).toBe(11);
  });

  test("is remembered by its cell", () => {
    expect(memory.recall("'Bench log'!F1", twice)?.args).toEqual([[[5], [-1], [200], [null]]]);
    expect(memory.recall("'Bench log'!A29", contactWatts)?.args).toEqual([5, 0.5]);
    expect(memory.recall("'Bench log'!A28", contactWatts)).toBeUndefined();
    expect(grid.valueAt(at("A29"))).toBe(2.5);
  });
});

test("autocomplete says what each argument means, in which unit, and what holds without it", () => {
  const [description] = descriptionsFor([twice]);
  expect(description).toMatchObject({ functionName: "BIMETAL.TEST.TWICE", abstract: "A function for this test." });
  expect(description?.functionParameter).toEqual([
    { name: "number", detail: "a number, in A", example: "", require: 1, repeat: 0 },
  ]);
  expect(descriptionsFor([told])[0]?.functionParameter[0]).toMatchObject({
    require: 0,
    detail: "anything; left out: nothing",
  });
});
