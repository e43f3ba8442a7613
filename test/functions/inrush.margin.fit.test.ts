import { call } from "../../src/definition/call";
import type { Range } from "../../src/definition/cells";
import { explained } from "../../src/definition/explained";
import margin from "../../src/functions/inrush.margin";
import fit from "../../src/functions/thermal.fit";
import forecast from "../../src/functions/thermal.forecast";

// A breaker of pickup 20 A and time constant 100 s: its exact times at five currents, moved by ±5 % in turn.
const currents = [26, 30, 36, 44, 60, 26, 30, 36, 44, 60];
const times = currents.map((current, i) => [
  100 * Math.log(current ** 2 / (current ** 2 - 400)) * (i % 2 === 0 ? 1.05 : 0.95),
]);
const block = call(fit, [currents.map((current) => [current]), times]) as Range;
const cell = (row: number, column: number) => block[row]?.[column] as number;

test("the running margin is the pickup's lower limit, the thermal one the lower forecast", () => {
  const [answer] = call(margin, [60, 4, 12, 20, block]);
  expect(block[0]?.[0]).toBe("pickup");
  expect(answer?.[0]).toBeCloseTo(cell(0, 3) / 12, 12);
  expect(answer?.[1]).toBeCloseTo((call(forecast, [60, block])[0]?.[0] as number) / 4, 12);
  // 100 s · ln(3600/3200) = 11.78 s, so a 4 s start has room, whatever the scatter of 5 %.
  expect(answer?.[1]).toBeGreaterThan(2);
  expect(answer?.slice(2)).toEqual(["not known", "not known", "thermal rides through, magnetic not known"]);
});

test("a start longer than the upper forecast trips, one in between may trip", () => {
  expect(call(margin, [60, 20, 12, 20, block])[0]?.[4]).toBe("trips");
  expect(call(margin, [60, 11.8, 12, 20, block])[0]?.[4]).toBe("may trip");
});

test("one fit answers a column of starts", () => {
  expect(call(margin, [[[60], [30]], [[4], [4]], 12, 20, block]).map((row) => row[4])).toEqual([
    "thermal rides through, magnetic not known",
    "thermal rides through, magnetic not known",
  ]);
});

test("the explanation tells the probability", () => {
  const { steps, plot } = explained(margin, [60, 4, 12, 20, block]);
  expect(steps.at(-1)?.sentence).toContain("probability");
  expect(Number(steps.at(-1)?.plain)).toBeGreaterThan(0.99);
  expect(plot?.bands).toHaveLength(1);
});

test("conditions that a fit cannot follow are refused", () => {
  expect(String(call(margin, [60, 4, 12, 20, block, undefined, undefined, 40])[0]?.[0])).toContain(
    "ambient: a fit holds for the strip and the air of its own trials",
  );
  expect(String(call(margin, [60, 4, 12, 20, block, undefined, 25])[0]?.[0])).toContain(
    "preload: less than the fitted pickup",
  );
});
