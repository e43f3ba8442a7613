import { product, quotient } from "../../src/metrology/propagate";
import { repeatsOf } from "../../src/metrology/repeats";
import { combinedUncertainty, coverageFactor, effectiveDegrees } from "../../src/metrology/uncertainty";

const relative = (found: number, expected: number) => Math.abs(found / expected - 1);

// JCGM 100:2008, example H.2: five readings of voltage, current and phase taken together. The printed results are
// 127.732(71), 219.847(295), 254.260(236); more digits from the same readings by another program.
describe("JCGM 100 example H.2, resistance and reactance measured together", () => {
  const volts = [5.007, 4.994, 5.005, 4.99, 4.999];
  const milliamperes = [19.663, 19.639, 19.64, 19.685, 19.678];
  const phases = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

  /** Correlation of two means of readings taken in pairs: JCGM 100 eq. (14), (17). */
  const correlationOf = (x: readonly number[], y: readonly number[]): number => {
    const [a, b] = [repeatsOf(x), repeatsOf(y)];
    const joint = x.reduce((sum, value, i) => sum + (value - a.mean) * ((y[i] as number) - b.mean), 0);
    return joint / (x.length * (x.length - 1)) / (a.u * b.u);
  };

  const [v, i, phi] = [volts, milliamperes.map((mA) => mA / 1000), phases].map(repeatsOf) as [
    ReturnType<typeof repeatsOf>,
    ReturnType<typeof repeatsOf>,
    ReturnType<typeof repeatsOf>,
  ];
  const r = {
    vi: correlationOf(volts, milliamperes),
    vphi: correlationOf(volts, phases),
    iphi: correlationOf(milliamperes, phases),
  };
  const correlation = (a: number, b: number): number => (a === 1 ? r.iphi : b === 1 ? r.vi : r.vphi);

  test("means, standard uncertainties of the means and correlations", () => {
    expect(v.mean).toBeCloseTo(4.999, 12);
    expect(i.mean).toBeCloseTo(0.019661, 15);
    expect(phi.mean).toBeCloseTo(1.04446, 12);
    expect(relative(v.u, 0.0032093613071762423)).toBeLessThan(1e-11);
    expect(relative(i.u, 9.47100839404126e-6)).toBeLessThan(1e-11);
    expect(relative(phi.u, 0.0007520638270785266)).toBeLessThan(1e-11);
    expect(r.vi).toBeCloseTo(-0.3553112198175105, 10);
    expect(r.vphi).toBeCloseTo(0.8576242108399543, 10);
    expect(r.iphi).toBeCloseTo(-0.645111217689245, 10);
  });

  const contributions = {
    R: [
      (Math.cos(phi.mean) / i.mean) * v.u,
      -((v.mean * Math.cos(phi.mean)) / i.mean ** 2) * i.u,
      -((v.mean * Math.sin(phi.mean)) / i.mean) * phi.u,
    ],
    X: [
      (Math.sin(phi.mean) / i.mean) * v.u,
      -((v.mean * Math.sin(phi.mean)) / i.mean ** 2) * i.u,
      ((v.mean * Math.cos(phi.mean)) / i.mean) * phi.u,
    ],
    Z: [v.u / i.mean, -(v.mean / i.mean ** 2) * i.u],
  };

  test.each([
    ["R", contributions.R, 0.07107140739699594, 0.071],
    ["X", contributions.X, 0.2955816773586437, 0.295],
    ["Z", contributions.Z, 0.2363361300823795, 0.236],
  ] as const)("u(%s) with the correlations", (_, parts, computed, printed) => {
    const u = combinedUncertainty(parts, correlation);
    expect(relative(u, computed)).toBeLessThan(1e-9);
    expect(Math.abs(u - printed)).toBeLessThan(0.001);
  });

  test.each([
    ["R", contributions.R, 0.1945444544885795],
    ["X", contributions.X, 0.2009093059276565],
    ["Z", contributions.Z, 0.20407642544735027],
  ] as const)("u(%s) without them is another number altogether", (_, parts, computed) => {
    expect(relative(combinedUncertainty(parts), computed)).toBeLessThan(1e-9);
  });

  test("Z = V ÷ I as METER.OHMS computes it: 254.260(236) Ω", () => {
    const z = quotient(
      [
        { value: v.mean, u: v.u, degrees: 4 },
        { value: i.mean, u: i.u, degrees: 4 },
      ],
      r.vi,
    );
    expect(relative(z.value, 254.25970194801891)).toBeLessThan(1e-12);
    expect(relative(z.u, 0.2363361300823795)).toBeLessThan(1e-9);
    expect(z.degrees).toBe(4);
  });
});

// JCGM 100:2008, example H.1, a gauge block; nm. Inputs as printed, the phases with more digits by another program.
describe("JCGM 100 example H.1, end gauge calibration", () => {
  const parts = [
    { amount: 25, degrees: 18 },
    { amount: 9.6632223427629, degrees: 25.621306005114295 },
    { amount: 2.8867873148698995, degrees: 50 },
    { amount: 16.59902706050192, degrees: 2 },
  ];
  const u = combinedUncertainty(parts.map(({ amount }) => amount));

  test("u = 32 nm, effective degrees of freedom 16.7", () => {
    expect(relative(u, 31.658160186628674)).toBeLessThan(1e-13);
    expect(relative(effectiveDegrees(parts), 16.741148896949646)).toBeLessThan(1e-12);
  });

  test("the comparison's 25.6 degrees of freedom follow from its own three parts", () => {
    const degrees = effectiveDegrees([
      { amount: 13 / Math.sqrt(5), degrees: 24 },
      { amount: 10 / 2.5705818356363155, degrees: 5 },
      { amount: 20 / 3, degrees: 8 },
    ]);
    expect(relative(degrees, 25.621306005114295)).toBeLessThan(1e-12);
  });
});

describe("coverage factors for 95 %", () => {
  // JCGM 100, table G.2, and at degrees of freedom that are no whole number, by another program.
  test.each([
    [1, 12.706204736174705],
    [5, 2.5705818356363155],
    [16, 2.1199052992212546],
    [100, 1.9839715185235522],
    [2.5, 3.574654842003683],
    [16.7, 2.112706420659591],
    [25.6, 2.0570937309039476],
  ])("ν = %d: k = %d", (degrees, k) => {
    expect(relative(coverageFactor(degrees), k)).toBeLessThan(1e-10);
  });

  test("without limit 2 is taken, which covers two rectangular distributions of any size (1.645 to 1.902 by another program)", () => {
    const k95 = [1.6454482589631922, 1.6520671266399898, 1.724685551390925, 1.8338920591678145, 1.901767185278012];
    for (const k of k95) expect(coverageFactor(Infinity)).toBeGreaterThan(k);
    expect(coverageFactor(Infinity)).toBe(2);
  });
});

// JCGM 101:2008, 9.2: the sum of four inputs.
describe("JCGM 101 example 9.2, an additive model", () => {
  test("four unit uncertainties make 2; one of 10 among them makes 10.15", () => {
    expect(combinedUncertainty([1, 1, 1, 1])).toBe(2);
    expect(relative(combinedUncertainty([1, 1, 1, 10]), 10.14889156509222)).toBeLessThan(1e-14);
  });
});

describe("correlation", () => {
  test("readings that move together fully: a quotient keeps no uncertainty, a product twice the relative one", () => {
    const pair = [
      { value: 0.04, u: 0.0004, degrees: Infinity },
      { value: 20, u: 0.2, degrees: Infinity },
    ] as const;
    expect(quotient(pair, 1).u).toBeLessThan(1e-10);
    expect(relative(product(pair, 1).u, 0.02 * 0.8)).toBeLessThan(1e-12);
    expect(product(pair, -1).u).toBeLessThan(1e-9);
  });

  test("with repeats of both, the smaller degrees of freedom stand for correlated readings", () => {
    const pair = [
      { value: 1, u: 0.1, degrees: 9 },
      { value: 1, u: 0.1, degrees: 4 },
    ] as const;
    expect(product(pair, 0.5).degrees).toBe(4);
    expect(product(pair, 0).degrees).toBeCloseTo(4 / (1 / 9 + 1 / 4), 12);
  });
});
