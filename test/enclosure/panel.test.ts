import { array, assert, constant, constantFrom, double, integer, oneof, property, record } from "fast-check";
import { type Panel, panelOf } from "../../src/enclosure/panel";
import { fallsBelowLoad, reratedIn } from "../../src/enclosure/rerating";
import { wattsAt } from "../../src/enclosure/rise";
import { NoAnswer } from "../../src/metrology/no-answer";
import { iec60898 } from "../../src/trip/iec60898";
import { ul489 } from "../../src/trip/ul489";

const between = (min: number, max: number) => double({ min, max, noNaN: true });

const panels = record({
  ways: array(
    record({
      rating: constantFrom(6, 10, 16, 20, 32, 63),
      lossAtRating: between(0.5, 8),
      load: oneof(constant(0), between(0.5, 40)),
      poles: integer({ min: 1, max: 4 }),
      characteristic: constantFrom(iec60898.B, iec60898.C, ul489),
    }),
    { minLength: 1, maxLength: 12 },
  ),
  otherWatts: between(0, 30),
  lossLaw: constantFrom("constant" as const, "copper" as const),
  cooling: record({
    cabinet: record({
      height: between(0.3, 2),
      width: between(0.3, 1),
      depth: between(0.1, 0.5),
      mounting: constantFrom("free" as const, "wall" as const, "middle of row" as const),
    }),
    method: constantFrom("balance" as const, "IEC TR 60890" as const, "flat" as const),
    room: between(10, 45),
    emissivity: between(0.3, 1),
    partitions: integer({ min: 0, max: 0 }),
  }),
});

const solved = (panel: Panel) => {
  try {
    return panelOf(panel);
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return undefined;
    throw thrown;
  }
};

describe("a board in its enclosure", () => {
  test("settles where the heat made is the heat passed, to 1e-6 W, and its ways and the rest add up to the total", () => {
    let answered = 0;
    assert(
      property(panels, (panel) => {
        const result = solved(panel);
        if (!result) return;
        answered++;
        const { total, inside, topFactor, ways } = result;
        const passed = wattsAt(panel.cooling, Math.max(0, (inside - panel.cooling.room) / topFactor));
        expect(Math.abs(total - passed)).toBeLessThan(1e-6);
        expect(Math.abs(ways.reduce((sum, { watts }) => sum + watts, panel.otherWatts) - total)).toBeLessThan(1e-9);
        expect(total).toBeLessThan(result.runsAway.watts);
      }),
      { numRuns: 120, seed: 30 },
    );
    expect(answered).toBeGreaterThan(50);
  });

  test("in a warmer room leaves no way a greater margin", () => {
    assert(
      property(panels, between(0.1, 10), (panel, warmer) => {
        const cool = solved(panel);
        const warm = solved({ ...panel, cooling: { ...panel.cooling, room: panel.cooling.room + warmer } });
        if (!cool || !warm) return;
        warm.ways.forEach(({ margin }, i) => {
          expect(margin).toBeLessThanOrEqual((cool.ways[i] as { margin: number }).margin);
        });
      }),
      { numRuns: 60, seed: 31 },
    );
  });

  test("the way named first is below a margin of 1 before any other, and at that air temperature has exactly 1", () => {
    assert(
      property(panels, (panel) => {
        const result = solved(panel);
        if (result?.first === undefined) return;
        const { fallsAt } = result.ways[result.first] as { fallsAt: number };
        // A load above a rating that no cool air raises is below 1 from the start.
        if (!Number.isFinite(fallsAt)) return;
        for (const way of panel.ways)
          if (way.load > 0) expect(reratedIn(fallsAt, way) / way.load).toBeGreaterThan(1 - 1e-9);
        const first = panel.ways[result.first] as Panel["ways"][number];
        expect(reratedIn(fallsAt + 0.01, first) / first.load).toBeLessThan(1);
      }),
      { numRuns: 150, seed: 32 },
    );
  });

  test("with nothing on has the air of the room", () => {
    const off = { rating: 20, lossAtRating: 4, load: 0, poles: 1, characteristic: iec60898.C };
    const cooling = {
      cabinet: { height: 0.6, width: 0.4, depth: 0.12, mounting: "wall" },
      method: "balance",
      room: 35,
      emissivity: 0.9,
      partitions: 0,
    } as const;
    const { inside, total, first } = panelOf({ ways: [off], otherWatts: 0, cooling, lossLaw: "constant" });
    expect([inside, total, first]).toEqual([35, 0, undefined]);
  });
});

describe("the balance of a board", () => {
  test("is the only one: heat passed grows faster than the rise, heat made at most in a straight line", () => {
    const rises = Array.from({ length: 41 }, (_, i) => 2 * i);
    assert(
      property(panels, ({ cooling }) => {
        const passed = rises.flatMap((rise) => {
          try {
            return [rise === 0 ? 0 : wattsAt(cooling, rise)];
          } catch {
            return [];
          }
        });
        for (let i = 2; i < passed.length; i++) {
          const [a, b, c] = passed.slice(i - 2, i + 1) as [number, number, number];
          expect(c - b).toBeGreaterThan((b - a) * (1 - 1e-9));
        }
      }),
      { numRuns: 60, seed: 33 },
    );
  });

  test("is found wherever walking through the air temperatures finds one, and refused where it finds none", () => {
    const found = { one: 0, none: 0 };
    const hotter = panels.map((panel) => ({
      ...panel,
      ways: panel.ways.map((way) => ({ ...way, lossAtRating: 30 * way.lossAtRating })),
    }));
    assert(
      property(hotter, (panel) => {
        const { cooling, ways, otherWatts, lossLaw } = panel;
        let result: ReturnType<typeof panelOf> | undefined;
        try {
          result = panelOf(panel);
        } catch (thrown) {
          if (!(thrown as Error).message.startsWith("The heat runs away")) return;
        }
        // By hand: each way poles × loss × (load ÷ rating)²; strips trip by themselves at 110 °C, those of UL 489 at 105 °C.
        const lost = ways.reduce(
          (sum, { poles, lossAtRating, load, rating }) => sum + poles * lossAtRating * (load / rating) ** 2,
          0,
        );
        const hottest = ways.some(({ characteristic }) => characteristic === ul489) ? 105 : 110;
        const c = result?.topFactor ?? 1;
        const excess = (inside: number) =>
          wattsAt(cooling, (inside - cooling.room) / c) -
          otherWatts -
          lost * (lossLaw === "copper" ? 1 + 0.00393 * (inside - 20) : 1);
        if (!result && cooling.method === "IEC TR 60890") return;
        const step = (hottest - cooling.room) / 100;
        const temperatures = Array.from({ length: 100 }, (_, i) => cooling.room + (i + 1) * step);
        const enough = temperatures.map((t) => excess(t) > 0);
        const crossings = temperatures.filter((_, i) => enough[i] && !enough[i - 1]);
        expect(crossings).toHaveLength(result ? 1 : 0);
        if (result) {
          found.one++;
          expect(Math.abs(result.inside - (crossings[0] as number))).toBeLessThanOrEqual(step * (1 + 1e-6));
        } else found.none++;
      }),
      { numRuns: 60, seed: 34 },
    );
    expect(found.one).toBeGreaterThan(10);
    expect(found.none).toBeGreaterThan(10);
  });
});

describe("re-rating", () => {
  test("by the square-root law with 80 K to the trip: 20 K warmer leaves √0.75 = 0.866 of the rating", () => {
    expect(reratedIn(50, { rating: 20, load: 0, characteristic: iec60898.C })).toBeCloseTo(20 * 0.8660254, 6);
    expect(reratedIn(30, { rating: 20, load: 0, characteristic: iec60898.C })).toBe(20);
  });

  test("of UL 489 begins above 40 °C, with 65 K to the trip at 105 °C: √(45 ÷ 65) = 0.832 at 60 °C", () => {
    const breaker = { rating: 20, load: 20, characteristic: ul489 };
    expect([-20, 25, 40].map((inside) => reratedIn(inside, breaker))).toEqual([20, 20, 20]);
    expect(reratedIn(60, breaker)).toBeCloseTo(20 * 0.8320503, 6);
    // The same pair of temperatures is printed for switchgear in IEEE C37.20.1: 50 °C leaves 0.920.
    expect(reratedIn(50, breaker) / 20).toBeCloseTo(0.92, 3);
    expect(fallsBelowLoad(breaker)).toBe(40);
    expect(fallsBelowLoad({ ...breaker, load: 20.1 })).toBe(-Infinity);
  });
});
