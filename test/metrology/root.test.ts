import { root } from "../../src/metrology/root";

describe("a root between two ends", () => {
  const counted = (f: (x: number) => number) => {
    const count = {
      calls: 0,
      f: (x: number) => {
        count.calls++;
        return f(x);
      },
    };
    return count;
  };

  test.each<[string, (x: number) => number, number, number, number]>([
    ["√2", (x) => x * x - 2, 0, 2, Math.SQRT2],
    ["falling, ends given the wrong way round", (x) => 5 - x, 9, 1, 5],
    ["ln x = 1", (x) => Math.log(x) - 1, 0, 10, Math.E],
    ["cos x = x (Dottie's number, OEIS A003957)", (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ["x = e⁻ˣ (the omega constant, OEIS A030178)", (x) => x - Math.exp(-x), 0, 1, 0.5671432904097838],
    ["a jump", (x) => (x < 0.7 ? -1 : 1), 0, 1, 0.7],
    ["1e-20", (x) => x - 1e-20, 0, 1, 1e-20],
  ])("finds %s to the last digits", (_, f, from, to, expected) => {
    const count = counted(f);
    expect(Math.abs(root(count.f, from, to) / expected - 1)).toBeLessThanOrEqual(4e-16);
    expect(count.calls).toBeLessThan(150);
  });

  test("a very flat crossing is found as far as the function tells", () => {
    expect(root((x) => (x - 0.3) ** 9, 0, 1)).toBeCloseTo(0.3, 10);
  });

  test("a smooth function takes a dozen calls, not fifty", () => {
    const count = counted((x) => Math.exp(x) - 3);
    expect(root(count.f, 0, 5)).toBeCloseTo(Math.log(3), 14);
    expect(count.calls).toBeLessThan(16);
  });

  test("an end that is the root is returned", () => {
    expect(root((x) => x, 0, 1)).toBe(0);
    expect(root((x) => x - 1, 0, 1)).toBe(1);
  });

  test("an infinite end value tells the side", () => {
    expect(root((x) => Math.log(x), 0, 3)).toBeCloseTo(1, 15);
    expect(root((x) => 1 / x - 4, 0, 1)).toBeCloseTo(0.25, 15);
  });

  test("a root at zero, between ends of both signs, is found", () => {
    expect(Math.abs(root((x) => Math.sinh(x) + x ** 3, -1, 2))).toBeLessThan(1e-15);
  });

  test("without a crossing it is a defect of the caller", () => {
    expect(() => root((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => root(() => Number.NaN, -1, 1)).toThrow(RangeError);
  });
});
