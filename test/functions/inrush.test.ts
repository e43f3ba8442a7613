import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import inrushCeiling from "../../src/functions/inrush.ceiling";
import inrushLocked from "../../src/functions/inrush.locked";
import inrushMotor from "../../src/functions/inrush.motor";
import inrushPeak from "../../src/functions/inrush.peak";
import inrushStarts from "../../src/functions/inrush.starts";
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

describe("INRUSH.CEILING of small and of slow motors", () => {
  test("up to 10 A the edition of 2023 may have a smaller next size, and that is said", () => {
    expect(explained(inrushCeiling, [4]).cautions[0]).toBe(
      "Where the edition of 2023 is in force 10 A is a standard rating too, and then the next size here.",
    );
    expect(explained(inrushCeiling, [4.1]).cautions.join(" ")).not.toMatch(/10 A is a standard rating/);
  });

  test("a slow synchronous motor has a limit of its own", () => {
    expect(explained(inrushCeiling, [40, "synchronous"]).cautions[0]).toMatch(/450 r\/min or less\) .* 200 %/);
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

describe("INRUSH.STARTS", () => {
  test("a running current that trips by itself, and starts that overlap, are refused", () => {
    expect(answers(inrushStarts, 96, 1.5, 24, 24, 60, 60)[0]?.[0]).toBe(
      "running current: less than the pickup of 24 A is wanted, not 24 A: that current trips the breaker without any start.",
    );
    expect(answers(inrushStarts, 96, 1.5, 14, 24, 60, 1)[0]?.[0]).toBe(
      "period: at least the start time of 1.5 s is wanted, not 1 s: one start would begin within the other.",
    );
  });

  test("of very many starts the first hundred and the last are listed", () => {
    const rows = answers(inrushStarts, 96, 0.01, 0, 24, 6000, 2);
    expect(rows).toHaveLength(102);
    expect(rows[99]?.[0]).toBe(100);
    expect(rows[100]?.[0]).toBeGreaterThan(1000);
    expect(rows[101]?.[0]).toBe("starts per hour");
    expect(explained(inrushStarts, [96, 0.01, 0, 24, 6000, 2]).cautions[0]).toMatch(/^Only the first 100 starts/);
  });

  test("a start current that the strip carries for ever sets no limit", () => {
    expect(answers(inrushStarts, 20, 1.5, 14, 24, 60, 60).at(-1)).toEqual(["starts per hour", "no limit"]);
  });
});
