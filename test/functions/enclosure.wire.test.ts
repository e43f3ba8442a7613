import { call } from "../../src/definition/call";
import { explained } from "../../src/definition/explained";
import wire from "../../src/functions/enclosure.wire";

const refusal = (...args: Parameters<typeof call>[1][number][]) => {
  const cell = call(wire, args)[0]?.[0];
  return cell instanceof Error ? `${cell.name}: ${cell.message}` : cell;
};

describe("ENCLOSURE.WIRE", () => {
  test("a column of sizes is answered row by row, a size that no table has in its own row", () => {
    // Hand-worked: 10² × 0.0121 × 1 and 10² × 0.00183 × 1, both at 20 °C.
    const rows = call(wire, [10, 1, [["1.5 mm2"], ["3 mm2"], ["10 mm²"]], 20]);
    expect(rows[0]?.[0]).toBeCloseTo(1.21, 12);
    expect(rows[1]?.[0]).toHaveProperty("name", "NoAnswer");
    expect(rows[2]?.[0]).toBeCloseTo(0.183, 12);
  });

  test("a bare number is no size", () => {
    expect(refusal(10, 1, 10)).toBe(
      'BadInput: size: a conductor size with its unit is wanted, such as "12 AWG", "250 kcmil" or "2.5 mm²", not the bare number 10.',
    );
    expect(refusal(10, 1, "10")).toBe(
      'BadInput: size: a conductor size with its unit is wanted, such as "12 AWG", "250 kcmil" or "2.5 mm²", not the text "10".',
    );
    expect(refusal(10, 1, null)).toBe("BadInput: size is blank.");
  });

  test("two in parallel on a bench are a cable of two cores in a shop: neither is guessed", () => {
    expect(refusal(10, 1, "2 × 3/0 AWG")).toMatch(
      /^BadInput: size: the size of one conductor is wanted, not the text "2 × 3\/0 AWG": of several alike in parallel each carries its part/,
    );
    expect(refusal(10, 1, "3x2.5 mm2")).toMatch(/of a cable's name only the core counts\.$/);
  });

  test("copper at 0 °C is said: it may be a blank cell", () => {
    expect(explained(wire, [10, 1, "10 mm²", 0]).cautions[0]).toBe(
      "The copper is taken at 0 °C; some sheets hand a blank cell over as 0.",
    );
  });

  test("the temperature in °F is noticed", () => {
    expect(refusal(10, 1, "10 mm2", 300)).toBe(
      "BadInput: temperature: at most 250 °C is wanted, not 300 °C; in °C; was °F meant?",
    );
  });

  test("the steps carry the numbers: 7.41 Ω/km × 309.5 ÷ 254.5 = 9.011 Ω/km", () => {
    const { steps, answer } = explained(wire, [20, 10, "2.5 mm2"]);
    expect(steps[0]?.plain).toBe("R' = 7.41 Ω/km × (234.5 + 75) ÷ (234.5 + 20) = 9.011 Ω/km");
    expect(answer).toBe("10 m of 2.5 mm² make 36.05 W of heat at 20 A.");
  });
});
