import fc from "fast-check";
import { leadOhms, reachableCurrent, sourceVolts, type TestLoop } from "../../src/bench/source";
import { type Conductor, conductorNamed } from "../../src/contact/conductor";

const size = (name: string): Conductor => {
  const found = conductorNamed(name);
  if (!found) throw new Error(`no conductor ${name}`);
  return found;
};

test("leads are taken at 75 °C: the printed value for AWG, the 20 °C value × (234.5 + 75) ÷ (234.5 + 20) for mm²", () => {
  expect(leadOhms({ size: size("6 AWG"), length: 3 })).toBeCloseTo(0.004824, 12);
  // 7.41 mΩ/m × 309.5 ÷ 254.5 × 2 m, by hand
  expect(leadOhms({ size: size("2.5 mm²"), length: 2 })).toBeCloseTo(0.0180228, 7);
});

const loop: TestLoop = { current: 100, size: size("1 AWG"), length: 2, drop: 0.199, reactance: 0.004 };

test("resistive and reactive drops add as the sides of a right angle: 3, 4, 5", () => {
  expect(sourceVolts(loop)).toBeCloseTo(0.5, 12);
  expect(sourceVolts({ ...loop, reactance: 0 })).toBeCloseTo(0.3, 12);
});

test("at the reachable current the loop takes just the open-circuit volts", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1000, noNaN: true }),
      fc.double({ min: 0.5, max: 10, noNaN: true }),
      fc.double({ min: 0, max: 0.02, noNaN: true }),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      (current, length, reactance, open) => {
        const asked = { ...loop, current, length, reactance };
        const reached = reachableCurrent(asked, open);
        // The breaker is a resistance: its drop grows with the current.
        const there = { ...asked, current: reached, drop: (asked.drop / current) * reached };
        expect(sourceVolts(there)).toBeCloseTo(open, 9);
      },
    ),
  );
});
