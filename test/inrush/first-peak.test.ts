import { currentAfterClosing, firstPeakAngle, firstPeakFactor } from "../../src/inrush/first-peak";

describe("the first peak of an R–L circuit closed at voltage zero", () => {
  test("a pure resistance peaks at the crest of its sine", () => {
    expect(firstPeakFactor(1)).toBeCloseTo(Math.SQRT2, 14);
    expect(firstPeakAngle(1)).toBeCloseTo(Math.PI / 2, 14);
  });

  test("a pure inductance peaks at twice the crest, half a cycle after closing", () => {
    expect(firstPeakFactor(0)).toBeCloseTo(2 * Math.SQRT2, 14);
    expect(firstPeakAngle(0)).toBeCloseTo(Math.PI, 14);
  });

  // The same equation maximised by another program, printed to three decimals.
  test.each([
    [0.95, 1.416],
    [0.9, 1.424],
    [0.8, 1.46],
    [0.7, 1.517],
    [0.5, 1.694],
    [0.45, 1.753],
    [0.4, 1.819],
    [0.3, 1.978],
    [0.25, 2.074],
    [0.2, 2.183],
    [0.15, 2.309],
    [0.1, 2.455],
  ])("at power factor %d it is %d times the r.m.s. current", (powerFactor, factor) => {
    expect(Math.abs(firstPeakFactor(powerFactor) - factor)).toBeLessThanOrEqual(5e-4 + 1e-12);
  });

  // IEC 60947-1, ratio n of making to breaking capacity by power factor; corroborated from 6 kA up, the rest from memory.
  // Its n are rounded to one or two decimals.
  test.each([
    [0.95, 1.41],
    [0.9, 1.42],
    [0.8, 1.47],
    [0.7, 1.53],
    [0.5, 1.7],
    [0.3, 2.0],
    [0.25, 2.1],
    [0.2, 2.2],
  ])("at power factor %d it agrees within 1.5 %% with n = %d of IEC 60947-1", (powerFactor, n) => {
    expect(Math.abs(firstPeakFactor(powerFactor) / n - 1)).toBeLessThan(0.015);
  });

  test("κ of IEC 60909-0 (1.02 + 0.98·exp(−3R/X)) agrees within 1.9 % from power factor 0.15 to 0.95", () => {
    for (let powerFactor = 0.15; powerFactor <= 0.9501; powerFactor += 0.05) {
      const kappa = 1.02 + 0.98 * Math.exp(-3 / Math.tan(Math.acos(powerFactor)));
      expect(Math.abs((kappa * Math.SQRT2) / firstPeakFactor(powerFactor) - 1)).toBeLessThan(0.0192);
    }
  });

  test("a motor's start between power factor 0.1 and 0.4 lies inside the 1.8 to 2.8 of IEC 60034-12:2016, clause 1 note 4", () => {
    for (let powerFactor = 0.1; powerFactor <= 0.4001; powerFactor += 0.05) {
      expect(firstPeakFactor(powerFactor)).toBeGreaterThan(1.8);
      expect(firstPeakFactor(powerFactor)).toBeLessThan(2.8);
    }
  });

  test("it is the highest of 4,000 samples of the first cycle, at every power factor", () => {
    for (let powerFactor = 0; powerFactor <= 1; powerFactor += 0.02) {
      let highest = 0;
      for (let i = 0; i <= 4000; i++)
        highest = Math.max(highest, currentAfterClosing(powerFactor, (i / 4000) * 2 * Math.PI));
      const factor = firstPeakFactor(powerFactor) / Math.SQRT2;
      expect(factor).toBeGreaterThanOrEqual(highest - 1e-14);
      expect(factor - highest).toBeLessThan(1e-6);
      expect(currentAfterClosing(powerFactor, firstPeakAngle(powerFactor))).toBeCloseTo(factor, 12);
    }
  });

  // R·i + X·di/dx = √2·sin(x + closing), |R + jX| = 1, i(0) = 0: followed in steps of the classical fourth order, no formula of ours in it.
  const steppedPeak = (powerFactor: number, closing: number): number => {
    const reactance = Math.sqrt(1 - powerFactor ** 2);
    const slope = (x: number, i: number) => (Math.SQRT2 * Math.sin(x + closing) - powerFactor * i) / reactance;
    const h = (2 * Math.PI) / 1000;
    let [current, peak] = [0, 0];
    for (let n = 0; n < 1000; n++) {
      const x = n * h;
      const a = slope(x, current);
      const b = slope(x + h / 2, current + (h / 2) * a);
      const c = slope(x + h / 2, current + (h / 2) * b);
      const d = slope(x + h, current + h * c);
      current += (h * (a + 2 * b + 2 * c + d)) / 6;
      peak = Math.max(peak, Math.abs(current));
    }
    return peak;
  };

  test.each([0.02, 0.1, 0.3, 0.5, 0.7, 0.9])(
    "at power factor %d it is that of the differential equation, and no other instant of closing peaks higher",
    (powerFactor) => {
      const factor = firstPeakFactor(powerFactor);
      expect(Math.abs(steppedPeak(powerFactor, 0) / factor - 1)).toBeLessThan(1e-5);
      for (let closing = -3; closing <= 3; closing += 0.25)
        expect(steppedPeak(powerFactor, closing)).toBeLessThan(factor * (1 + 1e-6));
    },
  );

  test("more resistance never peaks higher, down to power factors no meter can tell from 0", () => {
    const factors = [0, 1e-300, 1e-17, 1e-9, 1e-3, 0.1, 0.5, 0.9, 1 - 1e-9, 1 - 1e-16, 1].map(firstPeakFactor);
    for (let i = 1; i < factors.length; i++) expect(factors[i]).toBeLessThanOrEqual(factors[i - 1] as number);
    expect(factors.at(-1)).toBeCloseTo(Math.SQRT2, 14);
  });
});
