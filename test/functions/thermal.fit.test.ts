import { call } from "../../src/definition/call";
import { type Argument, CellError, type Range } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import compare from "../../src/functions/thermal.compare";
import fit from "../../src/functions/thermal.fit";
import forecast from "../../src/functions/thermal.forecast";
import holds from "../../src/functions/thermal.holds";
import { fittedTo } from "../../src/thermal/fit";
import { forecast as forecastOf, holdProbability } from "../../src/thermal/forecast";
import sensitivity from "../thermal/current-sensitivity.json";

const said = (definition: AnyDefinition, ...args: Argument[]) =>
  call(definition, args).map((row) =>
    row.map((cell) => (cell instanceof Error ? `${cell.name}: ${cell.message}` : cell)),
  );
const column = (...cells: (number | string | null)[]) => cells.map((cell) => [cell]);

const currents = column(30, 30, 40, 40, 51, 51, 80, 80, 25, 25, 22.6);
const times = column(125, 118, 49.4, 56.4, 28.8, 30.6, 10.5, 10.6, 600, 600, 3600);
const outcomes = column(...Array(8).fill("tripped"), "held", "held", "held");
const block = call(fit, [currents, times, outcomes]) as unknown as Range;
const row = (rows: readonly (readonly unknown[])[], label: string) => rows.find(([first]) => first === label);

describe("THERMAL.FIT", () => {
  test("the block alone stands for the breaker: read back, it answers as the trials do", () => {
    const trials = currents.map(([current], i) => ({
      current: current as number,
      seconds: times[i]?.[0] as number,
      held: outcomes[i]?.[0] === "held",
      preload: 0,
    }));
    const fitted = fittedTo(trials);
    for (const shot of [
      { current: 27, preload: 0 },
      { current: 51, preload: 12 },
    ]) {
      const { low, median, high } = forecastOf(fitted, shot);
      expect(said(forecast, shot.current, block, undefined, shot.preload)).toEqual([[low, median, high]]);
      expect(said(holds, shot.current, 5, block, shot.preload)).toEqual([[holdProbability(fitted, shot, 5)]]);
    }
  });

  test("the block is no larger than its page tells a sheet to leave free, however many trials there are", () => {
    const [, columns, rows] = fit.cautions.join(" ").match(/(six) columns and up to (\d+) rows/) ?? [];
    const many = Array.from({ length: 120 }, (_, i) => i);
    const steady = many.map((i) => [24 + (i % 12)]);
    const timed = many.map((i) => [60 * (1 + ((i * 7) % 5) / 50) * Math.log1p(400 / ((24 + (i % 12)) ** 2 - 400))]);
    for (const one of [block, call(fit, [steady, timed]) as unknown as Range]) {
      expect(one.length).toBeLessThanOrEqual(Number(rows));
      expect(one.length).toBeGreaterThan(Number(rows) - 10);
      for (const line of one) expect([line.length, columns]).toEqual([6, "six"]);
    }
  });

  test("a column of currents meets one block, row by row; a blank row stays blank", () => {
    const rows = said(holds, column(24, null, 30, 80), column(600, null, 5, 20), block);
    expect(rows.map(([cell]) => typeof cell)).toEqual(["number", "string", "number", "number"]);
    expect([rows[0]?.[0], rows[1]?.[0]]).toEqual([1, ""]);
    expect(rows[2]?.[0]).toBeGreaterThan(0.999);
    expect(rows[2]?.[0]).toBeLessThan(1);
    expect(rows[3]?.[0]).toBeLessThan(0.01);
  });

  test("magnetic trips are left out and counted: under 0.1 s, or above the lower magnetic current", () => {
    const withMagnetic = [column(...currents.flat(), 90, 150), column(...times.flat(), 0.03, 0.4)] as const;
    const all = column(...outcomes.flat(), "tripped", "tripped");
    const told = (...kind: Argument[]) => said(fit, ...withMagnetic, all, undefined, ...kind);
    // below 0.1 s alone; C of 20 A has its lower magnetic current at 100 A
    expect(row(told(), "left out")?.[1]).toBe(1);
    expect(row(told(20, "C"), "left out")?.[1]).toBe(2);
    expect(row(told(20, "C"), "pickup")?.slice(1, 5)).toEqual(row(block, "pickup")?.slice(1, 5));
    // a marked setting of 100 A: no magnetic trip up to 80 A; the two trips at 80 A stay in
    expect(row(told(20, undefined, 100), "left out")?.[1]).toBe(2);
    expect(row(told(20, undefined, 80), "left out")?.[1]).toBe(4);
    expect(told(undefined, "C")[0]?.[0]).toBe(
      "BadInput: rating: the characteristic is told in multiples of the rating; give the rating too.",
    );
  });

  test("a blank preload is cold, a blank row is none, and all outcomes left out are trips", () => {
    const cold = said(fit, column(30, 30, 40, 40, 51), column(125, 118, 49.4, 56.4, 28.8));
    expect(said(fit, column(30, 30, null, 40, 40, 51), column(125, 118, null, 49.4, 56.4, 28.8))).toEqual(cold);
    expect(said(fit, column(30, 30, 0, 40, 40, 51), column(125, 118, 0, 49.4, 56.4, 28.8))).toEqual(cold);
    expect(
      said(fit, column(30, 30, 40, 40, 51), column(125, 118, 49.4, 56.4, 28.8), undefined, column(0, null, 0, null, 0)),
    ).toEqual(cold);
    expect(row(cold, "held")?.[1]).toBe(0);
  });

  test.each<[string, Argument[], RegExp]>([
    [
      "a blank outcome",
      [column(30, 40, 51), column(125, 49, 29), column("tripped", null, "held")],
      /^BadInput: outcomes, row 2: no outcome beside a trial; say tripped or held\.$/,
    ],
    [
      "a blank outcome that a host hands over as 0",
      [column(30, 40, 51), column(125, 49, 29), column("tripped", 0, "held")],
      /outcomes, row 2: no outcome/,
    ],
    [
      "a ramped trial",
      [column(30, 40), column(125, 49), column("tripped", "ramped")],
      /outcomes, row 2: a current turned up until the trip is no trial at one current; leave that row out\.$/,
    ],
    [
      "another word",
      [column(30, 40), column(125, 49), column("tripped", "pop")],
      /outcomes, row 2: the text "pop" is not known; known are "tripped", "held"\.$/,
    ],
    [
      "a missing time",
      [column(30, 40, 51), column(125, null, 29)],
      /^BadInput: times, row 2: more than 0 s is wanted, not 0 s: no time beside a current\.$/,
    ],
    [
      "a missing current",
      [column(30, null, 51), column(125, 49, 29)],
      /^BadInput: currents, row 2: more than 0 A is wanted/,
    ],
    [
      "lists that do not fit",
      [column(30, 40, 51), column(125, 49)],
      /The ranges do not fit: currents has 3 rows × 1 column, times has 2 rows × 1 column\.$/,
    ],
    [
      "one current",
      [column(32, 32, 32), column(40, 44, 47), undefined, undefined, 20],
      /^NoAnswer: currents: all trips were at 32 A.*repeat at a second current, for example 40 A \(2 × the rating\)\.$/,
    ],
    [
      "nothing but holds",
      [column(20, 22), column(3600, 3600), column("held", "held")],
      /^NoAnswer: outcomes: all 2 trials held/,
    ],
    [
      "nothing but magnetic trips",
      [column(200, 220), column(0.02, 0.02)],
      /^NoAnswer: currents: no trial is left to fit/,
    ],
  ])("refuses %s", (_, args, sentence) => {
    expect(said(fit, ...args)[0]?.[0]).toMatch(sentence);
  });

  test("says what the data tell and what not", () => {
    const told = explained(fit, [currents, times, outcomes]);
    expect(told.answer).toBe(
      "The breaker's pickup is 24.98 A, between 24.95 A and 26.17 A (95 %); its time constant 105.1 s.",
    );
    expect(told.steps[0]?.sentence).toMatch(/^8 trips and 3 holds\./);
    const open = explained(fit, [column(40, 50, 64, 80), column(25.5, 15.84, 9.912, 6.125)]);
    expect(open.answer).toMatch(/at most [\d.]+ A \(95 %\), without a lower limit/);
    expect(open.cautions.join(" ")).toMatch(/add a trial at a lower current that takes minutes/);
    const exact = explained(fit, [column(24, 24, 40.8, 40.8), column(100, 100, 25, 25)]);
    expect(exact.answer).toMatch(/its limits not known/);
    expect(exact.cautions.join(" ")).toMatch(/without scatter, as if typed from a formula/);
    const two = explained(fit, [column(24, 40.8), column(98, 25)]);
    expect(two.cautions.join(" ")).toMatch(/leave nothing to tell their error by: repeat them/);
  });

  test("a trial far from the curve is named, and still counted", () => {
    const odd = explained(fit, [
      column(25, 25, 30, 30, 40, 40, 51, 51, 60, 60, 80, 80),
      column(101, 104, 58, 59, 29, 29.4, 16.5, 16.9, 11.7, 12, 6.4, 10.9),
    ]);
    expect(odd.cautions[0]).toMatch(
      /^One trial lies [\d.]+ scatters from the curve \(tripped after 10\.9 s at 80 A\): check its row/,
    );
  });

  test("the picture marks what tripped and what held, with curve, prediction band and the kind's band behind", () => {
    const { plot } = explained(fit, [currents, times, outcomes, undefined, 20, "C"]);
    expect(plot?.points?.filter(({ role }) => role === "held")).toHaveLength(3);
    expect(plot?.points?.filter(({ role }) => role === "tripped")).toHaveLength(8);
    expect(plot?.bands?.map(({ name }) => name)).toEqual(["a sound breaker trips", "the next trial, 95 %, from cold"]);
    expect(plot?.lines?.[0]?.samples.length).toBeGreaterThan(10);
  });
});

describe("a fit handed on", () => {
  test("is recognised by its block, and asked for where something else stands", () => {
    expect(said(holds, 30, 5, 24.98)[0]?.[0]).toMatch(
      /^BadInput: fit: the whole block that THERMAL\.FIT spills is wanted as a range, not 24\.98\.$/,
    );
    expect(said(holds, 30, 5, block.slice(1))[0]?.[0]).toMatch(/beginning with its row "pickup"\.$/);
    expect(said(holds, 30, 5, block.slice(0, 5))[0]?.[0]).toMatch(
      /the row "log-likelihood" is missing; hand over the whole block/,
    );
    const broken = [[new CellError("#N/A"), ...Array(5).fill(new CellError("#N/A"))], ...block.slice(1)] as Range;
    expect(said(holds, 30, 5, broken)[0]?.[0]).toMatch(
      /the block holds #N\/A; THERMAL\.FIT says there what the trials lack\.$/,
    );
    expect(said(holds, 30, 5, [[new CellError("#SPILL!")]])[0]?.[0]).toMatch(
      /the cell holds #SPILL!; clear the cells that its block needs, to the right of THERMAL\.FIT and below it\.$/,
    );
    const changed = block.map((cells) =>
      cells[0] === "time constant" ? ["time constant", "slow", ...cells.slice(2)] : cells,
    ) as Range;
    expect(said(holds, 30, 5, changed)[0]?.[0]).toBe(
      'BadInput: fit, row "time constant": a number is wanted, not the text "slow".',
    );
  });

  test("rows may be shuffled and blank rows follow, as a sheet may have it", () => {
    const shuffled = [...block.slice(0, 1), ...block.slice(1).reverse(), Array(6).fill(null)] as Range;
    expect(said(forecast, 40, shuffled)).toEqual(said(forecast, 40, block));
    expect(said(holds, 40, 50, shuffled)).toEqual(said(holds, 40, 50, block));
  });

  test("a preload at or above the pickup is refused with the pickup", () => {
    expect(said(forecast, 40, block, undefined, 25)[0]?.[0]).toMatch(
      /^BadInput: preload: less than the pickup of 24\.9829 A is wanted, not 25 A/,
    );
  });

  test("without a lower limit of the pickup HOLDS does not know, FORECAST does", () => {
    const open = call(fit, [column(40, 50, 64, 80), column(25.5, 15.84, 9.912, 6.125)]) as unknown as Range;
    expect(row(open, "pickup")?.[3]).toBe("no limit");
    expect(said(holds, 50, 5, open)).toEqual([["not known"]]);
    const [[low, median, high] = []] = said(forecast, 50, open);
    expect([low, median, high].every((cell) => typeof cell === "number")).toBe(true);
    expect(Number(low)).toBeLessThan(Number(median));
    expect(Number(high)).toBeGreaterThan(Number(median));
  });

  test("confidence outside 0.5 to 0.99 is refused", () => {
    expect(said(forecast, 40, block, 95)[0]?.[0]).toBe("BadInput: confidence: at most 0.99 is wanted, not 95.");
  });

  test("the explanation says what an error of the current does (mpmath: current-sensitivity.json)", () => {
    const five = sensitivity.rows.find(({ I_over_Iu }) => I_over_Iu === 1.05);
    expect(five?.dlnt_dlnI).toBeCloseTo(-8.214, 3);
    const steps = explained(holds, [1.05 * 24.982856318251628, 60, block]).steps;
    expect(steps.at(-1)).toMatchObject({
      sentence: "An error of the current setting comes on top: 1 % more current is 8.2 % less time here",
      plain: "d ln t ÷ d ln I = -8.21",
    });
  });
});

describe("THERMAL.COMPARE", () => {
  test("says whether a change shows", () => {
    expect(explained(compare, [column(41, 44, 39.5, 46), column(36.2, 33.9, 38)]).answer).toMatch(
      /^The times have changed: after is 0\.8459 times before/,
    );
    expect(explained(compare, [column(41, 44, 39.5), column(41.5, 43, 39.9)]).answer).toMatch(/^No change is shown/);
  });

  test("refuses one time against one", () => {
    expect(said(compare, 41, 39)[0]?.[0]).toMatch(/^NoAnswer: times: one time before and one after show no scatter/);
  });
});
