import fc from "fast-check";
import { Solver } from "odex";
import { asked } from "../../src/trip/asked";
import { benchOf, type Conditions } from "../../src/trip/conditions";
import { holdsUpTo, tripsFrom } from "../../src/trip/current";
import { knownCharacteristics } from "../../src/trip/known";
import { rampRange } from "../../src/trip/ramp";

const kind = (name: string) => {
  const found = knownCharacteristics.find((one) => one.name === name);
  if (!found) throw new Error(`no characteristic ${name}`);
  return found;
};
const breaker = (name: string, conditions: Conditions = {}, rating = 20) => asked(rating, kind(name), conditions);

describe("the current for a time undoes the time for a current", () => {
  const names = fc.constantFrom("B", "C", "D", "IEC 60947-2 typical", "UL 489 typical");
  const times = fc.double({ min: -1, max: 3.5, noNaN: true }).map((exponent) => 10 ** exponent);

  /** At an edge the time jumps, and a search ends on the edge itself. */
  const atEdge = (current: number) => [1, 1.05, 1.13, 2.55, 3, 5, 10, 20].includes(Number((current / 20).toFixed(7)));

  test("where the shortest time falls strictly, to 1e-9", () => {
    fc.assert(
      fc.property(names, times, (name, seconds) => {
        const one = breaker(name);
        const current = holdsUpTo(one, seconds);
        const { shortest } = one.rangeAt(current);
        // On a plateau or a step there is no inverse: only the search's statement is left.
        if (shortest.line === "quickest body" && !atEdge(current))
          expect(Math.abs(one.rangeAt(current).shortest.seconds / seconds - 1)).toBeLessThan(1e-9);
        expect(one.rangeAt(current * (1 - 1e-7)).shortest.seconds).toBeGreaterThan(seconds);
        expect(one.rangeAt(current * (1 + 1e-7)).shortest.seconds).toBeLessThanOrEqual(seconds);
      }),
    );
  });

  test("where the longest time falls strictly, to 1e-9", () => {
    fc.assert(
      fc.property(names, times, (name, seconds) => {
        const one = breaker(name);
        const current = tripsFrom(one, seconds);
        if (current === undefined) return;
        const { longest } = one.rangeAt(current);
        expect(longest.seconds).toBeLessThanOrEqual(seconds * (1 + 1e-12));
        // Just above the trip multiple the longest time falls so fast that one step of a double is more than 1e-9 of it.
        if (longest.line === "slowest body" && current > 1.46 * 20 && !atEdge(current))
          expect(1 - longest.seconds / seconds).toBeLessThan(1e-9);
        expect(one.rangeAt(current * (1 + 1e-7)).longest.seconds).toBeLessThanOrEqual(seconds);
        expect(one.rangeAt(current * (1 - 1e-7)).longest.seconds).toBeGreaterThan(seconds);
      }),
    );
  });
});

test("hand-worked: C 20 A holds 23.988 A for 10 s, and has tripped within 10 s from 119.48 A", () => {
  // m² = p²·e^(t/τ)/(e^(t/τ) − 1), p = 1.13; τ = 1/0.218618 s and 60/0.218618 s
  expect(holdsUpTo(breaker("C"), 10)).toBeCloseTo(23.98759, 4);
  expect(tripsFrom(breaker("C"), 10)).toBeCloseTo(119.4775, 3);
});

test("quicker than the printed magnetic time nothing is promised", () => {
  expect(tripsFrom(breaker("C"), 0.09)).toBeUndefined();
  expect(tripsFrom(breaker("C"), 0.1)).toBe(200);
});

describe("a current turned up by hand", () => {
  /** Trip current of one body by an ODE solver, in multiples of the rating. */
  const byOde = (pickup: number, tau: number, rate: number): number => {
    const solver = new Solver(1);
    solver.absoluteTolerance = solver.relativeTolerance = 1e-10;
    const heatAt = (end: number) =>
      solver.solve((t, [heat = 0]) => [((rate * t) ** 2 - heat) / tau], 0, [0], end).y[0] as number;
    let [low, high] = [pickup / rate, pickup / rate + 5 * tau];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (heatAt(middle) < pickup ** 2) low = middle;
      else high = middle;
    }
    return rate * high;
  };

  test("no sound strip trips outside the ramp's range, by an ODE solver", () => {
    const bench = benchOf({ rating: 20, characteristic: kind("C") }, {});
    const rate = 0.4;
    const { lowest, highest } = rampRange(bench, { rate, from: 0 });
    const time = (multiple: number, pickup: number) => Math.log(multiple ** 2 / (multiple ** 2 - pickup ** 2));
    const currents: number[] = [];
    for (const pickup of [1.13, 1.2, 1.3, 1.4, 1.449])
      for (const seconds of [1, 60]) {
        // A strip that takes exactly 1 s or 60 s at 2.55 × (test c) and meets test b
        const tau = seconds / time(2.55, pickup);
        currents.push(20 * byOde(pickup, tau, rate / 20));
      }
    for (const current of currents) {
      expect(current).toBeGreaterThanOrEqual(lowest * (1 - 1e-6));
      expect(current).toBeLessThanOrEqual(highest * (1 + 1e-6));
    }
    expect(Math.min(...currents) / lowest).toBeLessThan(1.01);
    expect(Math.max(...currents) / highest).toBeGreaterThan(0.97);
  });

  test("a 20 A breaker turned up at 0.2 A/s may well let go near 36 A (common practice, no source)", () => {
    for (const name of ["C", "UL 489"]) {
      const { lowest, highest } = rampRange(benchOf({ rating: 20, characteristic: kind(name) }, {}), {
        rate: 0.2,
        from: 0,
      });
      expect(lowest).toBeLessThan(36);
      expect(highest).toBeGreaterThan(36);
    }
  });

  test("endlessly slowly it trips at its pickup: between hold and trip edge", () => {
    const { lowest, highest } = rampRange(benchOf({ rating: 20, characteristic: kind("UL 489") }, {}), {
      rate: 1e-5,
      from: 0,
    });
    expect(lowest).toBeCloseTo(20, 2);
    expect(highest).toBeCloseTo(27, 1);
  });

  test("a faster hand never trips it at less current", () => {
    const bench = benchOf({ rating: 20, characteristic: kind("C") }, {});
    let before = { lowest: 0, highest: 0 };
    for (const rate of [0.01, 0.1, 1, 10, 100]) {
      const range = rampRange(bench, { rate, from: 0 });
      expect(range.lowest).toBeGreaterThanOrEqual(before.lowest * (1 - 1e-9));
      expect(range.highest).toBeGreaterThanOrEqual(before.highest * (1 - 1e-9));
      before = range;
    }
  });

  test("the magnetic release caps it", () => {
    const { lowest, highest } = rampRange(benchOf({ rating: 20, characteristic: kind("C") }, {}), {
      rate: 1e4,
      from: 0,
    });
    expect(lowest).toBeLessThanOrEqual(100);
    expect(highest).toBe(200);
  });
});
