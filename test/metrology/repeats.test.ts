import { repeatsOf } from "../../src/metrology/repeats";

describe("repeated readings (JCGM 100, 4.2)", () => {
  test("1, 2, 3: mean 2, s 1, u 1/√3, two degrees of freedom (hand-worked)", () => {
    expect(repeatsOf([1, 2, 3])).toEqual({ mean: 2, s: 1, u: 1 / Math.sqrt(3), degrees: 2 });
  });

  test("a large common value does not drown the scatter (NIST StRD, NumAcc3: s = 0.1 about 1,000,000.2)", () => {
    const readings = [1000000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1000000.1 : 1000000.3))];
    const { mean, s } = repeatsOf(readings);
    expect(Math.abs(mean - 1000000.2)).toBeLessThan(1e-9);
    expect(Math.abs(s - 0.1)).toBeLessThan(1e-9);
  });

  test("readings that agree have no scatter", () => {
    expect(repeatsOf([5, 5, 5]).s).toBe(0);
  });
});
