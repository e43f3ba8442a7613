import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import profile from "../../src/functions/thermal.profile";
import ramp from "../../src/functions/thermal.ramp";
import rest from "../../src/functions/thermal.rest";
import state from "../../src/functions/thermal.state";
import time from "../../src/functions/thermal.time";

const said = (definition: AnyDefinition, ...args: Argument[]) =>
  call(definition, args).map((row) =>
    row.map((cell) => (cell instanceof Error ? `${cell.name}: ${cell.message}` : cell)),
  );
const column = (...cells: (number | string | null)[]) => cells.map((cell) => [cell]);

describe("THERMAL.TIME", () => {
  test("at the pickup and below it holds, just above it takes long", () => {
    expect(said(time, column(17, 18, 18.000001), 18, 100)).toEqual([["holds"], ["holds"], [expect.any(Number)]]);
    // hand-worked: 100 s × ln(18.000001² / (18.000001² − 18²)) = 100 s × ln(9.00000075e6)
    expect(said(time, 18.000001, 18, 100)[0]?.[0]).toBeCloseTo(100 * Math.log(9000000.75), 5);
  });

  test("a blank preload in a column is cold; a blank row stays blank, on hosts that say null and on those that say 0", () => {
    const expected = [[expect.any(Number)], [""], [expect.any(Number)]];
    expect(said(time, column(20, null, 40), 10, 100, column(5, null, null))).toEqual(expected);
    expect(said(time, column(20, 0, 40), 10, 100, column(5, 0, 0))).toEqual(expected);
    expect(said(time, column(40, 40), 18, 80, column(0, 9))[0]?.[0]).toBeCloseTo(18.101875545850994, 12);
  });

  test("one row of currents answers across", () => {
    expect(said(time, [[18, 17]], 20, 100)).toEqual([["holds", "holds"]]);
  });

  test.each([
    [[0, 18, 80], "BadInput: current: more than 0 A is wanted, not 0 A (a blank cell counts as 0)."],
    [
      ["40", 18, 80],
      'BadInput: current: a number in A is wanted, not the text "40", which only looks like a number: type it again as one.',
    ],
    [[40, -1, 80], "BadInput: pickup: at least 0.001 A is wanted, not -1 A."],
    [[40, 18, 0], "BadInput: time constant: at least 0.001 s is wanted, not 0 s (a blank cell counts as 0)."],
    [
      [40, 18, 80, 18],
      "BadInput: preload: less than the pickup of 18 A is wanted, not 18 A: carried for long, that current trips the breaker before the test begins.",
    ],
    [[40, 18], "BadInput: time constant is missing."],
  ] as const)("refuses %j", (args, sentence) => {
    expect(said(time, ...args)).toEqual([[sentence]]);
  });
});

describe("THERMAL.STATE", () => {
  test("after the time that THERMAL.TIME names it stands at its trip", () => {
    const seconds = said(time, 33, 18, 80)[0]?.[0] as number;
    expect(said(state, 33, seconds * 0.999999, 18, 80)[0]?.[0]).toBeCloseTo(1, 5);
    expect(said(state, 33, seconds * 1.000001, 18, 80)).toEqual([["tripped"]]);
  });

  test("for ever at the pickup it stays at 1 and holds; a start at the trip has tripped", () => {
    expect(said(state, 18, 1e6, 18, 80)).toEqual([[1]]);
    expect(said(state, 0, 10, 18, 80, 1)).toEqual([["tripped"]]);
  });

  test("a start beyond the trip is refused", () => {
    expect(said(state, 10, 10, 18, 80, 1.2)).toEqual([["BadInput: start: at most 1 is wanted, not 1.2."]]);
  });
});

describe("THERMAL.PROFILE", () => {
  test("zeros mean the start of the clock and no current; blank rows at the end are none", () => {
    const duty = said(profile, column(0, 20, 40), column(0, 30, 0), 18, 150);
    expect(duty).toHaveLength(4);
    expect(duty[1]).toEqual([20, 0]);
    expect(said(profile, column(0, 20, 40, null), column(0, 30, 0, null), 18, 150)).toEqual(duty);
    expect(said(profile, column(0, 20, 40, 0), column(0, 30, 0, 0), 18, 150)).toEqual(duty);
  });

  test("the trip time is on the profile's own clock, and two rows at one time are a jump", () => {
    const early = said(profile, column(0, 600), column(40, 0), 18, 80).at(-1);
    const late = said(profile, column(1000, 1600), column(40, 0), 18, 80).at(-1);
    expect(early?.[0]).toBeCloseTo(18.101875545850994, 9);
    expect(late?.[0]).toBeCloseTo(1018.101875545851, 9);
    const jump = said(profile, column(0, 10, 10, 600), column(0, 0, 40, 40), 18, 80, undefined, "ramp").at(-1);
    expect(jump?.[0]).toBeCloseTo(28.101875545850994, 9);
  });

  test("a start at the trip trips at once", () => {
    expect(said(profile, column(0, 60), column(10, 0), 18.4, 90, 1).at(-1)).toEqual([0, 1]);
  });

  test.each([
    [[column(0, 10), column(1, 2, 3), 18, 80], "The lists do not fit: times has 2 cells, currents has 3."],
    [[5, 3, 18, 80], "times: at least two rows are wanted; the last row only ends the profile."],
    [[column(0, 20, 10), column(1, 2, 3), 18, 80], "times, row 3: the clock goes back from 20 s to 10 s."],
    [[column(0, 20), column(1, -2), 18, 80], "currents, row 2: at least 0 A is wanted, not -2 A."],
    [
      [column(0, 20), column(1, 2), 18, 80, 0, "curve"],
      'between: the text "curve" is not known; known are "step", "ramp".',
    ],
    [[column(0, 20), column(1, 2), column(18, 19), 80], "pickup: one cell is wanted, not 2 rows × 1 column."],
  ] as [Argument[], string][])("refuses %j", (args, sentence) => {
    expect(said(profile, ...args)).toEqual([Array(2).fill(`BadInput: ${sentence}`)]);
  });
});

describe("THERMAL.RAMP", () => {
  test("says why it trips above its pickup, and by how much", () => {
    const told = explained(ramp, [0.2, 22, 100]);
    expect(told.answer).toBe("It trips at 34.95 A after 174.7 s: 12.9 A (58.8 %) above its pickup of 22 A.");
    // hand-worked: at 110 s, x = t/τ = 1.1: r²τ²(x² − 2x + 2(1 − e⁻ˣ)) = 400 × 0.3443 = 137.7 A² of 484 A²
    expect(told.steps[0]?.sentence).toMatch(
      /passes the pickup the strip is far from its trip.*28\.5 % of the trip's heat/,
    );
    expect(told.steps.at(-1)?.plain).toBe("r < 0.01 × 22 / 100 = 0.0022 A/s");
  });

  test("a ramp that begins above the pickup says so", () => {
    expect(explained(ramp, [0.2, 22, 100, 30]).steps[0]?.sentence).toMatch(/begins above the pickup/);
  });

  test("refuses a hand that does not turn", () => {
    expect(said(ramp, 0, 22, 100)[0]?.[0]).toBe(
      "BadInput: rate: at least 0.000001 A/s is wanted, not 0 A/s (a blank cell counts as 0).",
    );
  });
});

test("a profile logged every second for a day is explained and drawn, with no more samples than a picture can show", () => {
  const seconds = Array.from({ length: 86_400 }, (_, i) => i);
  const { plot, answer } = explained(profile, [column(...seconds), column(...seconds.map((i) => i % 7)), 20, 100]);
  expect(answer).toMatch(/^It holds/);
  for (const { samples } of plot?.lines ?? []) expect(samples.length).toBeLessThan(10_000);
});

test("THERMAL.REST refuses to cool to nothing: that takes for ever", () => {
  expect(said(rest, 1, 0, 100)).toEqual([
    ["BadInput: target: more than 0 is wanted, not 0 (a blank cell counts as 0)."],
  ]);
});

test("the pictures show the trip where it is, with the current's own goal beside the state", () => {
  const { plot } = explained(profile, [column(0, 20, 50, 250), column(40, 0, 40, 0), 19, 90]);
  expect(plot?.points).toEqual([{ name: "trips", role: "tripped", x: expect.closeTo(59.14767239192497, 9), y: 1 }]);
  const [, strip, goal] = plot?.lines ?? [];
  expect(strip?.samples.at(-1)).toEqual({ x: expect.closeTo(59.14767239192497, 9), y: 1 });
  const at = (x: number) => goal?.samples.filter((sample) => sample.x <= x).at(-1)?.y;
  expect([at(19), at(30), at(55)]).toEqual([4, 0, 4]);
});
