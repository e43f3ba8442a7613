import { motorCeiling } from "../../src/inrush/ceiling";
import { NoAnswer } from "../../src/metrology/no-answer";

describe("the ceiling of a motor's breaker", () => {
  test("a percentage that is a standard rating stays, any other goes up to the next (hand-worked)", () => {
    expect(motorCeiling(28, "squirrel cage")).toEqual({ ceiling: 70, nextSize: 70, exception: 112 });
    expect(motorCeiling(28.1, "squirrel cage").nextSize).toBe(80);
  });

  test("rounding of doubles never lifts the size: 4.4 A × 2.5 and its like", () => {
    for (const size of [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125])
      expect(motorCeiling(size / 2.5, "squirrel cage").nextSize).toBe(size);
    for (const size of [15, 30, 45, 60, 90, 150]) expect(motorCeiling(size / 1.5, "wound rotor").nextSize).toBe(size);
  });

  test("the smallest motor may have 15 A, the smallest standard rating", () => {
    expect(motorCeiling(0.9, "squirrel cage").nextSize).toBe(15);
  });

  test("above the largest standard rating there is no answer", () => {
    expect(() => motorCeiling(2500, "squirrel cage")).toThrow(
      new NoAnswer("full load: 250 % of 2500 A is 6250 A, above the largest standard rating, 6000 A."),
    );
  });
});
