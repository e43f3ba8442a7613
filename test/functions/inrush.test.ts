import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import inrushCeiling from "../../src/functions/inrush.ceiling";
import inrushLocked from "../../src/functions/inrush.locked";
import inrushMotor from "../../src/functions/inrush.motor";
import inrushPeak from "../../src/functions/inrush.peak";
import inrushTransformer from "../../src/functions/inrush.transformer";

/** Rows of answers, a refusal as its sentence. */
const answers = (definition: AnyDefinition, ...args: Argument[]) =>
  call(definition, args).map((row) => row.map((cell) => (cell instanceof Error ? cell.message : cell)));

describe("INRUSH.PEAK", () => {
  test("a blank power factor counts as the worst one, on every host", () => {
    const worst = [200 * Math.SQRT2, 2 * Math.SQRT2];
    expect(answers(inrushPeak, [[100], [100]], [[null], [0]])).toEqual([worst, worst]);
  });

  test("a power factor in per cent is refused with a hint", () => {
    expect(answers(inrushPeak, 100, 85)[0]?.[0]).toBe(
      "power factor: at most 1 is wanted, not 85; a power factor in per cent is divided by 100.",
    );
  });
});

describe("INRUSH.MOTOR", () => {
  test("a column of motors: a power between two rows is refused in its own row", () => {
    expect(answers(inrushMotor, [[1], [4], [null], [5]], 230, 3)).toEqual([
      [4.2],
      ["power: 4 hp lies between two rows of Table 430.250 at 230 V, 3 hp and 5 hp."],
      [""],
      [15.2],
    ]);
  });

  test("says that kilowatts were converted, and how", () => {
    const { steps, cautions } = explained(inrushMotor, [0.75, 230, 1, "kw"]);
    expect(steps[0]?.plain).toBe("P = 0.75 kW ÷ 0.746 = 1.005 hp");
    expect(cautions[0]).toMatch(/motor rated in kilowatts/);
    expect(answers(inrushMotor, 0.75, 230, 1, "kw")).toEqual([[8]]);
  });

  test("two phases are neither one nor three", () => {
    expect(answers(inrushMotor, 1, 230, 2)).toEqual([["phases: 1 or 3 is wanted, not 2."]]);
    expect(answers(inrushMotor, 1, 230, null)).toEqual([["phases is blank."]]);
  });
});

describe("INRUSH.LOCKED", () => {
  test("a letter that is not used names those that are", () => {
    expect(answers(inrushLocked, 20, 460, 3, "O")[0]?.[0]).toBe(
      'letter: the text "O" is not known; known are "A", "B", "C", "D", "E", "F", "G", "H", "J", "K", "L", "M", "N", "P", "R", "S", "T", "U", "V".',
    );
  });
  test("the letter V has no upper end", () => {
    expect(answers(inrushLocked, 1, 100, 1, "v")).toEqual([[224, "no limit"]]);
  });
});

describe("INRUSH.CEILING", () => {
  test("names the largest rating that the exception reaches", () => {
    expect(explained(inrushCeiling, [34]).answer).toBe(
      "At most 90 A; if the motor will not start on it, up to 125 A, the largest standard rating within 136 A.",
    );
    expect(explained(inrushCeiling, [3]).answer).toBe(
      "At most 15 A; if the motor will not start on it, the exception allows no larger standard rating.",
    );
  });
});

describe("INRUSH.TRANSFORMER", () => {
  test("the caution about the point from memory reaches the reader", () => {
    expect(explained(inrushTransformer, [1, 250, 1]).sources.map(({ standing }) => standing)).toEqual([
      "handbook",
      "corroborated",
      "from memory",
    ]);
  });
});
