import { lockedRotor } from "../../src/inrush/locked-rotor";
import { codeLetters } from "../../src/inrush/nfpa70";

describe("the locked-rotor current of a code letter", () => {
  test("20 hp, 460 V, three phases, letter G: 157.9 A at the top (1000·hp·kVA/hp ÷ (√3·V), NFPA 70 Table 430.7(B))", () => {
    expect(lockedRotor({ power: 20, volts: 460, phases: 3, letter: "G" }).high).toBeCloseTo(157.9, 1);
  });

  test("a single phase takes √3 times as much at the same voltage", () => {
    const motor = { power: 1, volts: 230, letter: "K" } as const;
    const one = lockedRotor({ ...motor, phases: 1 });
    const three = lockedRotor({ ...motor, phases: 3 });
    expect(one.low / three.low).toBeCloseTo(Math.sqrt(3), 14);
    expect(one.high / three.high).toBeCloseTo(Math.sqrt(3), 14);
  });

  test("A starts at nothing and V never ends", () => {
    expect(lockedRotor({ power: 1, volts: 230, phases: 1, letter: "A" }).low).toBe(0);
    expect(lockedRotor({ power: 1, volts: 230, phases: 1, letter: "V" }).high).toBe(Infinity);
  });

  test("each letter begins where the one before it ends", () => {
    const spans = Object.values(codeLetters);
    for (let i = 1; i < spans.length; i++)
      expect((spans[i]?.[0] ?? 0) - (spans[i - 1]?.[1] ?? 0)).toBeCloseTo(0.01, 10);
  });

  // NFPA 70 Table 430.251(B), largest locked-rotor currents of Design B, C and D motors at 460 V, A.
  test.each([
    [5, 46, "J"],
    [20, 145, "G"],
    [100, 725, "G"],
  ] as const)("%d hp at 460 V: the Design B limit of %d A lies in letter %s", (power, limit, letter) => {
    const { low, high } = lockedRotor({ power, volts: 460, phases: 3, letter });
    expect(limit).toBeGreaterThanOrEqual(low);
    expect(limit).toBeLessThanOrEqual(high);
  });
});
