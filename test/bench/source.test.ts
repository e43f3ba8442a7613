import fc from "fast-check";
import {
  leadOhms,
  reachableCurrent,
  sourceVolts,
  spreadInductance,
  spreadMilliohms,
  type TestLoop,
} from "../../src/bench/source";
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

// Rectangular loop of round wire (Grover, Inductance Calculations), µH: sides and wire radius a in m, with the wire's own μ0/8π per metre.
const loopInductance = (width: number, height: number, a: number): number => {
  const diagonal = Math.hypot(width, height);
  const outside =
    -2 * (width + height) +
    2 * diagonal -
    height * Math.log((height + diagonal) / width) -
    width * Math.log((width + diagonal) / height) +
    height * Math.log((2 * height) / a) +
    width * Math.log((2 * width) / a);
  return 0.4 * outside + 0.05 * 2 * (width + height);
};

test("Rectangular loop of round wire (Grover, Inductance Calculations): spread out, leads have about 1 µH per metre", () => {
  // The same loops by summed partial inductances in another program: 4.35 µH and 3.81 µH without the wires' own.
  expect(loopInductance(1, 1, 0.002)).toBeCloseTo(4.35 + 0.2, 2);
  expect(loopInductance(2, 0.3, 0.004)).toBeCloseTo(3.81 + 0.23, 2);
  expect(loopInductance(1, 1, 0.002) / 4 / spreadInductance).toBeCloseTo(1.14, 2);
  expect(loopInductance(2, 0.3, 0.004) / 4.6 / spreadInductance).toBeCloseTo(0.88, 2);
  // 2π × 50 Hz × 1 µH
  expect(spreadMilliohms(50)).toBeCloseTo(0.31416, 5);
});
