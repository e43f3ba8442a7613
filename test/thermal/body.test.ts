import { assert, double, property } from "fast-check";
import { type Body, heatAfter, secondsToCool, secondsToTrip } from "../../src/thermal/body";
import sensitivity from "./current-sensitivity.json";
import hot from "./hot-starts.json";

describe("a steady current through one body", () => {
  // mpmath: see hot-starts.json
  test.each(hot.rows)("$I A after $Ip A and $rest_s s rest, pickup $Iu A: $t_trip s", (row) => {
    const seconds = secondsToTrip({ pickup: row.Iu, timeConstant: row.tau }, row.I, {
      preload: row.Ip,
      rest: row.rest_s,
    });
    if (row.t_trip === null) expect(seconds).toBe(Infinity);
    else expect(Math.abs(seconds / row.t_trip - 1)).toBeLessThan(1e-10);
  });

  test.each(sensitivity.rows)("$I_over_Iu times the pickup takes $t_over_tau time constants", (row) => {
    const body: Body = { pickup: 1, timeConstant: 1 };
    expect(Math.abs(secondsToTrip(body, row.I_over_Iu) / row.t_over_tau - 1)).toBeLessThan(1e-14);
    // and its slope is what mpmath has: the formula's own derivative by differences
    const h = 1e-6;
    const slope = Math.log(secondsToTrip(body, row.I_over_Iu * (1 + h)) / secondsToTrip(body, row.I_over_Iu * (1 - h)));
    expect(Math.abs(slope / Math.log((1 + h) / (1 - h)) / row.dlnt_dlnI - 1)).toBeLessThan(1e-6);
  });

  const amperes = () => double({ min: 0.5, max: 200, noNaN: true });
  const constants = () => double({ min: 1, max: 2000, noNaN: true });

  test("more current never takes longer, a warmer start never either", () => {
    assert(
      property(
        amperes(),
        amperes(),
        amperes(),
        constants(),
        double({ min: 0, max: 0.999, noNaN: true }),
        (...given) => {
          const [pickup, one, other, timeConstant, share] = given;
          const body = { pickup, timeConstant };
          const [less, more] = [Math.min(one, other), Math.max(one, other)];
          expect(secondsToTrip(body, more)).toBeLessThanOrEqual(secondsToTrip(body, less));
          expect(secondsToTrip(body, more, { preload: share * pickup })).toBeLessThanOrEqual(secondsToTrip(body, more));
        },
      ),
    );
  });

  test("after the time to trip the heat is the square of the pickup", () => {
    assert(
      property(
        amperes(),
        constants(),
        double({ min: 1.001, max: 20, noNaN: true }),
        (pickup, timeConstant, multiple) => {
          const current = multiple * pickup;
          const seconds = secondsToTrip({ pickup, timeConstant }, current);
          const heat = heatAfter(timeConstant, { heat: 0, current, seconds });
          expect(Math.abs(heat / pickup ** 2 - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  test("a body already at its trip takes no time, even in rest", () => {
    expect(secondsToTrip({ pickup: 20, timeConstant: 100 }, 5, { preload: 20 })).toBe(0);
  });

  test("hand-worked: one time constant after a step to 10 A the heat is 63.2 % of 100 A²", () => {
    expect(heatAfter(50, { heat: 0, current: 10, seconds: 50 })).toBeCloseTo(100 * (1 - 1 / Math.E), 12);
  });
});

describe("cooling without current", () => {
  test("hand-worked: to half its heat in τ·ln 2, and from the trip to 1 % in 4.605 τ", () => {
    expect(secondsToCool(100, { from: 400, to: 200 })).toBeCloseTo(100 * Math.LN2, 12);
    expect(secondsToCool(100, { from: 1, to: 0.01 })).toBeCloseTo(460.517, 3);
  });
  test("what is cool enough need not wait", () => {
    expect(secondsToCool(100, { from: 1, to: 2 })).toBe(0);
    expect(secondsToCool(100, { from: 2, to: 2 })).toBe(0);
  });
});
