import fc from "fast-check";
import { Solver } from "odex";
import { insulationLimit, leadRise } from "../../src/bench/lead";
import { type Conductor, conductorNamed } from "../../src/contact/conductor";
import { NoAnswer } from "../../src/metrology/no-answer";

const size = (name: string): Conductor => {
  const found = conductorNamed(name);
  if (!found) throw new Error(`no conductor ${name}`);
  return found;
};
const ten = size("10 mm²");

/** °C at the end of one second at k amperes per mm². */
const endAt = (k: number, start: number) =>
  start + leadRise({ current: k * ten.areaSquareMillimetres, seconds: 1, size: ten, start });

// IEC 60364-4-43 Table 43A and IEC 60364-5-54 Tables A.54.2 to A.54.6: k of copper, A·√s per mm², from and to which °C.
// k is printed as a whole number, so half a unit less must stay below the end temperature and half a unit more must pass it.
test.each([
  ["PVC up to 300 mm²", 115, 70, 160],
  ["PVC above 300 mm²", 103, 70, 140],
  ["EPR, XLPE", 143, 90, 250],
  ["rubber for 85 °C", 134, 85, 220],
  ["rubber for 60 °C", 141, 60, 200],
  ["a separate conductor, PVC", 143, 30, 160],
  ["a separate conductor, XLPE", 176, 30, 250],
  ["bare, in a restricted area", 228, 30, 500],
  ["bare, ordinary", 159, 30, 200],
  ["bare, where fire threatens", 138, 30, 150],
])("%s: k = %d takes copper from %d °C to %d °C", (_, k, from, to) => {
  expect(endAt(k - 0.5, from)).toBeLessThan(to);
  expect(endAt(k + 0.5, from)).toBeGreaterThan(to);
});

test("16 AWG melts after 5 s at 168.9 A from 25 °C (Onderdonk's equation, Stauffacher 1928), within 1 %", () => {
  const shot = { current: 168.9, size: size("16 AWG"), start: 25 };
  expect(leadRise({ ...shot, seconds: 4.95 })).toBeGreaterThan(1000);
  expect(() => leadRise({ ...shot, seconds: 5.05 })).toThrow(NoAnswer);
});

test("agrees with the heat equation integrated from copper's own constants, within K's rounding", () => {
  // IEC 60028: 1/58 Ω·mm²/m at 20 °C, 0.00393 per K; IEC 60949: 3.45 MJ/(K·m³), so 3.45 J/(K·m) for each mm².
  const solver = new Solver(1);
  solver.absoluteTolerance = solver.relativeTolerance = 1e-9;
  for (const [current, seconds, start] of [
    [300, 5, 20],
    [800, 1, 40],
    [600, 3, 70],
  ] as const) {
    const area = ten.areaSquareMillimetres;
    const kelvinPerSecond = (celsius: number) =>
      (current ** 2 * (1 / 58) * (1 + 0.00393 * (celsius - 20))) / (3.45 * area ** 2);
    const end = solver.solve((_, [celsius = 0]) => [kelvinPerSecond(celsius)], 0, [start], seconds).y[0] as number;
    const rise = leadRise({ current, seconds, size: ten, start });
    expect(Math.abs(rise / (end - start) - 1)).toBeLessThan(0.008);
  }
});

const shots = fc.record({
  current: fc.double({ min: 1, max: 500, noNaN: true }),
  first: fc.double({ min: 0.01, max: 3, noNaN: true }),
  second: fc.double({ min: 0.01, max: 3, noNaN: true }),
  start: fc.double({ min: -40, max: 100, noNaN: true }),
});

test("two shots without a pause are one shot: the second starts where the first ended", () => {
  fc.assert(
    fc.property(shots, ({ current, first, second, start }) => {
      const shot = { current, size: ten, start };
      const half = leadRise({ ...shot, seconds: first });
      const both = half + leadRise({ ...shot, start: start + half, seconds: second });
      expect(both).toBeCloseTo(leadRise({ ...shot, seconds: first + second }), 8);
    }),
  );
});

test("more current, more time, a warmer start or a thinner lead never warms less", () => {
  fc.assert(
    fc.property(shots, ({ current, first, second, start }) => {
      const rise = (change: object) => leadRise({ current, seconds: first, size: ten, start, ...change });
      for (const change of [
        { current: current * 1.1 },
        { seconds: first + second },
        { start: start + 10 },
        { size: size("6 mm²") },
      ])
        expect(rise(change)).toBeGreaterThan(rise({}));
    }),
  );
});

test("copper that would melt is refused, with when; after long currents the law is not the one to ask", () => {
  expect(() => leadRise({ current: 1000, seconds: 2, size: size("12 AWG"), start: 30 })).toThrow(
    // 226² × 3.309² × ln(1317.5 ÷ 264.5) ÷ 1000² = 0.898 s by hand
    new NoAnswer(
      "current: 1000 A through 12 AWG would melt the copper after 0.8978 s if no heat left it; a thicker lead is wanted.",
    ),
  );
  expect(() => leadRise({ current: 18.08, seconds: 3600, size: size("2.5 mm²"), start: 30 })).toThrow(
    // 226² × 2.5² × 1.6057 ÷ 18.08² = 1568 s by hand
    new NoAnswer(
      "time: 18.08 A through 2.5 mm² would melt the copper after 1568 s if no heat left it, but in 3600 s most of it does leave: for long currents the conductor's ampacity decides, not this law.",
    ),
  );
});

test("above 300 mm² PVC may reach less (IEC 60364-4-43 Table 43A)", () => {
  expect(insulationLimit(size("240 mm²"))).toBe(160);
  // 600 kcmil is 304 mm²
  expect(insulationLimit(size("600 kcmil"))).toBe(140);
});
