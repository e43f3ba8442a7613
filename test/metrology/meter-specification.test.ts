import { errorLimit, type MeterReading, rectangular } from "../../src/metrology/meter-error";
import { type Measured, product, quotient } from "../../src/metrology/propagate";

// Worked by another program (JCGM 100 arithmetic, the accuracy statements made up): ±(% of reading + counts × resolution).

const relative = (found: number, expected: number) => Math.abs(found / expected - 1);
const measured = (meter: MeterReading, degrees = Infinity): Measured => ({
  value: meter.reading,
  u: rectangular(errorLimit(meter)),
  degrees,
});

test("100.0 V ± (1 % + 2 counts of 0.1 V) is 98.8 to 101.2 V", () => {
  expect(errorLimit({ reading: 100, percent: 1, counts: 2, resolution: 0.1 })).toBeCloseTo(1.2, 14);
});

test("a negative reading has the same limit", () => {
  expect(errorLimit({ reading: -100, percent: 1, counts: 2, resolution: 0.1 })).toBeCloseTo(1.2, 14);
});

describe("M1: power from 230.4 V ± (0.8 % + 3 × 0.1 V) and 16.02 A ± (1.5 % + 3 × 0.01 A)", () => {
  const volts = { reading: 230.4, percent: 0.8, counts: 3, resolution: 0.1 };
  const amperes = { reading: 16.02, percent: 1.5, counts: 3, resolution: 0.01 };
  const power = product([measured(amperes), measured(volts)], 0);

  test("limits 2.1432 V and 0.2703 A", () => {
    expect(relative(errorLimit(volts), 2.1432)).toBeLessThan(1e-13);
    expect(relative(errorLimit(amperes), 0.2703)).toBeLessThan(1e-13);
    expect(relative(measured(volts).u, 1.237377096927206)).toBeLessThan(1e-13);
    expect(relative(measured(amperes).u, 0.15605777776195584)).toBeLessThan(1e-13);
  });

  test("3691.008 W, u = 41.058 W, U = 82.116 W", () => {
    expect(relative(power.value, 3691.008)).toBeLessThan(1e-13);
    expect(relative(power.u, 41.0579575163796)).toBeLessThan(1e-12);
    expect(relative(power.expanded, 82.1159150327592)).toBeLessThan(1e-12);
  });

  test("U is narrower than both limits at once, 3594.976 to 3788.198 W", () => {
    expect(power.value - power.expanded).toBeGreaterThan(3594.976);
    expect(power.value + power.expanded).toBeLessThan(3788.198);
  });

  test("the second-order term left out is small: u = 41.0584 W with it", () => {
    expect(relative(power.u, 41.058411609837286)).toBeLessThan(2e-5);
  });
});

describe("a pole at 41.2 mV ± (0.05 % + 3 × 0.1 mV) and 20 A ± (1 % + 3 × 0.01 A)", () => {
  const drop = measured({ reading: 0.0412, percent: 0.05, counts: 3, resolution: 0.0001 });
  const current = measured({ reading: 20, percent: 1, counts: 3, resolution: 0.01 });

  test("M3: 2.06 mΩ, u = 0.0165144 mΩ", () => {
    const ohms = quotient([drop, current], 0);
    expect(relative(ohms.value, 0.00206)).toBeLessThan(1e-13);
    expect(relative(ohms.u, 1.6514407850924194e-5)).toBeLessThan(1e-12);
    expect(relative(ohms.expanded, 3.302881570184839e-5)).toBeLessThan(1e-12);
  });

  test("M4: one meter for both (correlation 0.9) leaves a ratio far better known, u = 0.0066989 mΩ", () => {
    expect(Math.abs(quotient([drop, current], 0.9).u - 6.6989e-6)).toBeLessThan(6e-11);
  });

  test("M5: and a product worse, 0.824 W, u = 8.949 mW", () => {
    const watts = product([current, drop], 0.9);
    expect(relative(watts.value, 0.824)).toBeLessThan(1e-13);
    expect(relative(watts.u, 0.00894942310245005)).toBeLessThan(1e-12);
  });

  test("M6: five repeats that scatter by 0.045 mΩ bring ν = 11.201, k = 2.19618, U = 0.0571734 mΩ", () => {
    const scatter = (20 * 0.045e-3) / Math.sqrt(5);
    const u = Math.hypot(drop.u, scatter);
    const ohms = quotient([{ value: drop.value, u, degrees: (4 * u ** 4) / scatter ** 4 }, current], 0);
    expect(Math.abs(ohms.degrees - 11.201)).toBeLessThan(6e-4);
    expect(Math.abs(ohms.k - 2.19618)).toBeLessThan(6e-6);
    expect(Math.abs(ohms.expanded - 0.0571734e-3)).toBeLessThan(6e-11);
  });
});
