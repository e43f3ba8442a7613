import { normalQuantile } from "../../src/metrology/normal";
import { studentCdfWith, studentQuantile } from "../../src/metrology/student";
import table from "./special-functions.json";

const studentCdf = (t: number, dof: number) => studentCdfWith(dof)(t);
const relative = (found: number, expected: number) =>
  expected === 0 ? Math.abs(found) : Math.abs(found / expected - 1);
const rows = (name: "studentCdf" | "studentQuantile") =>
  table[name].map((row) => row.map(Number) as [number, number, number]);

describe("Student's t against 25 digits (mpmath: see special-functions.json)", () => {
  test.each(rows("studentQuantile"))("quantile of %d with %d degrees of freedom", (p, dof, expected) => {
    expect(relative(studentQuantile(p, dof), expected)).toBeLessThan(1e-12);
  });
  test.each(rows("studentCdf"))("the share below %d with %d degrees of freedom", (t, dof, expected) => {
    expect(relative(studentCdf(t, dof), expected)).toBeLessThan(1e-12);
  });
});

describe("Student's t in closed form", () => {
  test("one degree of freedom is the Cauchy distribution, ½ + arctan(t)/π", () => {
    for (const t of [-1e9, -50, -1, -1e-9, 0.3, 7]) {
      expect(studentCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 14);
    }
    expect(relative(studentCdf(-1e200, 1), 1e-200 / Math.PI)).toBeLessThan(1e-12);
  });
  test("two degrees of freedom: ½ + t/(2√(2+t²))", () => {
    for (const t of [-30, -2, 0.001, 0.7, 4]) {
      expect(studentCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 14);
    }
  });
  test("without end it is the normal distribution", () => {
    expect(studentQuantile(0.975, Infinity)).toBe(normalQuantile(0.975));
    expect(relative(studentQuantile(0.975, 1e9), normalQuantile(0.975))).toBeLessThan(1e-8);
  });
  test("the lower half mirrors the upper, the middle is 0, and the quantile undoes the share", () => {
    expect(studentQuantile(0.5, 3)).toBe(0);
    expect(studentQuantile(0.025, 7.5)).toBeCloseTo(-studentQuantile(0.975, 7.5), 12);
    for (const p of [1e-12, 0.01, 0.4, 0.500001, 0.74, 0.76, 0.999]) {
      for (const dof of [0.5, 1, 2.5, 16.7, 1e4]) {
        expect(relative(studentCdf(studentQuantile(p, dof), dof), p)).toBeLessThan(1e-12);
      }
    }
  });
});
