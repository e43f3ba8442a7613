import { lnNormalCdf, normalCdf, normalQuantile, normalSlope } from "../../src/metrology/normal";
import table from "./special-functions.json";

const rows = (name: "normalCdf" | "lnNormalCdf" | "normalQuantile") =>
  table[name].map(([argument, value]) => [Number(argument), Number(value)] as const);
const relative = (found: number, expected: number) =>
  expected === 0 ? Math.abs(found) : Math.abs(found / expected - 1);

// mpmath, 60 digits: see special-functions.json
describe("the normal distribution against 25 digits", () => {
  test.each(rows("normalCdf"))("Φ(%d)", (z, expected) => {
    expect(relative(normalCdf(z), expected)).toBeLessThan(2e-13);
  });
  test.each(rows("lnNormalCdf"))("ln Φ(%d)", (z, expected) => {
    expect(relative(lnNormalCdf(z), expected)).toBeLessThan(5e-15);
  });
  test.each(rows("normalQuantile"))("quantile of %d", (p, expected) => {
    expect(relative(normalQuantile(p), expected)).toBeLessThan(1e-15);
  });

  test("Φ(z) + Φ(−z) = 1, and the slope of ln Φ is φ/Φ", () => {
    for (let z = -8; z <= 8; z += 0.0625) {
      expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 15);
      const h = 1e-4;
      const slope = (lnNormalCdf(z + h) - lnNormalCdf(z - h)) / (2 * h);
      expect(Math.abs(slope / normalSlope(z) - 1)).toBeLessThan(5e-7);
    }
  });

  test("beyond any z lies nothing or everything", () => {
    expect([normalCdf(-Infinity), normalCdf(Infinity), lnNormalCdf(Infinity)].map((p) => p + 0)).toEqual([0, 1, 0]);
    expect(lnNormalCdf(-Infinity)).toBe(-Infinity);
  });

  test("quantile and Φ undo each other", () => {
    for (const p of [1e-300, 1e-12, 0.003, 0.2, 0.4999, 0.7, 0.99]) {
      expect(relative(normalCdf(normalQuantile(p)), p)).toBeLessThan(2e-13);
    }
  });

  test("the ends are infinite, and nothing lies outside", () => {
    expect([normalQuantile(0), normalQuantile(1), normalQuantile(2)]).toEqual([-Infinity, Infinity, Number.NaN]);
  });
});
