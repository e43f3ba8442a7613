import { conformanceProbability, conformity } from "../../src/metrology/conformity";

const relative = (found: number, expected: number) => Math.abs(found / expected - 1);

// JCGM 106:2012, printed to two digits; more digits by another program.
describe("conformance probability, JCGM 106", () => {
  test("breakdown voltage −5.47 V, u 0.05, upper −5.40: 0.92", () => {
    const p = conformanceProbability({ value: -5.47, u: 0.05, lower: -Infinity, upper: -5.4 });
    expect(relative(p, 0.9192433407662289)).toBeLessThan(1e-12);
  });
  test("burst strength 509.7 kPa, u 8.6, lower 490: 0.99", () => {
    const p = conformanceProbability({ value: 509.7, u: 8.6, lower: 490, upper: Infinity });
    expect(relative(p, 0.9890095473848223)).toBeLessThan(1e-12);
  });
  test("viscosity 13.6 mm²/s, u 1.8, 12.5 to 16.3: 0.66", () => {
    const p = conformanceProbability({ value: 13.6, u: 1.8, lower: 12.5, upper: 16.3 });
    expect(relative(p, 0.6626297864953078)).toBeLessThan(1e-12);
  });
  test("a speed of 106.6 km/h, u 2 %, is above 100 km/h with a probability of 0.999 (printed: 107 km/h)", () => {
    const value = 106.5876094853783;
    const p = conformanceProbability({ value, u: 0.02 * value, lower: -Infinity, upper: 100 });
    expect(p).toBeCloseTo(0.001, 5);
  });
  test("far outside it keeps its digits: Φ(−10) = 7.62e-24", () => {
    const far = { value: 0, u: 1, lower: 10, upper: Infinity };
    expect(relative(conformanceProbability(far), 7.61985302416e-24)).toBeLessThan(1e-12);
    expect(conformanceProbability({ ...far, lower: -Infinity, upper: -10 })).toBe(conformanceProbability(far));
  });
});

// Guard bands of one upper limit, U = 2u: the probability of not conforming at the acceptance limit is Φ(−w/u).
describe("the risk at an acceptance limit", () => {
  test.each([
    ["simple acceptance, w = 0", 0, 0.5],
    ["ISO 14253-1, w = 0.83 U", 0.83, 0.048457226266722817],
    ["ILAC-G8, w = U", 1, 0.02275013194817921],
    ["w = 1.5 U", 1.5, 0.0013498980316300946],
    ["w = 3 U", 3, 9.86587645037698e-10],
  ])("%s", (_, w, risk) => {
    const tested = { value: 50 - 2 * w * 0.5, u: 0.5, lower: -Infinity, upper: 50 };
    expect(Math.abs(1 - conformanceProbability(tested) - risk)).toBeLessThan(1e-15);
  });
});

describe("the verdict with a guard band of U = 2u", () => {
  const verdict = (value: number, lower = -Infinity, upper = 10) => conformity({ value, u: 0.5, lower, upper });

  test("one unit inside conforms, one outside does not, between is too close", () => {
    expect([8.9, 9, 9.01, 10, 10.99, 11, 11.01].map((value) => verdict(value))).toEqual([
      "conforms",
      "conforms",
      "too close to call",
      "too close to call",
      "too close to call",
      "too close to call",
      "does not conform",
    ]);
  });

  test("rounding of doubles does not move the edge", () => {
    expect(conformity({ value: 0.3, u: 0.1, lower: 0.1, upper: Infinity })).toBe("conforms");
    expect(conformity({ value: 0.7 + 0.1, u: 0.1, lower: -Infinity, upper: 1 })).toBe("conforms");
  });

  test("limits closer together than 4u leave nothing that conforms", () => {
    for (let value = -3; value <= 3; value += 0.01) expect(verdict(value, -0.9, 0.9)).not.toBe("conforms");
  });

  test("what conforms has a probability of at least 0.954, what does not at most 0.023", () => {
    for (let value = -5; value <= 15; value += 0.01) {
      const tested = { value, u: 0.5, lower: 0, upper: 10 };
      const p = conformanceProbability(tested);
      if (conformity(tested) === "conforms") expect(p).toBeGreaterThan(0.9544);
      if (conformity(tested) === "does not conform") expect(p).toBeLessThan(0.0228);
    }
  });
});
