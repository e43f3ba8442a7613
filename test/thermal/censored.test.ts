import { likeliest } from "../../src/thermal/censored";
import { type Height, summits } from "../../src/thermal/summit";
import regressions from "./censored-regressions.json";
import strd from "./nist-strd.json";

/** Digits right: −log10 of the relative error, 11 when all certified digits agree. */
const digits = (found: number, certified: number | string) =>
  Math.min(16, -Math.log10(Math.abs(found / Number(certified) - 1) + 1e-16));

describe("right-censored regressions (50-digit references: see censored-regressions.json)", () => {
  type Rows = readonly (readonly number[])[];
  const each: [
    string,
    { rows: Rows; coef: string[]; sigma: string; loglik_density_of_log_t: string },
    (x: number[]) => number[],
  ][] = [
    ["NIST Arrhenius", regressions.nistArrhenius, ([celsius = 0]) => [1, 11605 / (celsius + 273.16)]],
    ["motorettes", regressions.motorette, ([celsius = 0]) => [1, 1000 / (celsius + 273.2)]],
    ["Device-A, with a group that never failed", regressions.deviceA, ([kelvin = 0]) => [1, 11605 / kelvin]],
    ["ovarian, two covariates", regressions.ovarian, (x) => [1, ...x]],
  ];

  test.each(each)("%s: coefficients, scale and log-likelihood to nine digits", (_, { rows, ...expected }, design) => {
    const data = rows.flatMap((row) => {
      const [time = 0, failed = 0, count = 0] = row.slice(-3);
      return Array.from({ length: count }, () => ({
        y: Math.log(time),
        held: failed === 0,
        x: design([...row.slice(0, -3)]),
      }));
    });
    const found = likeliest({
      y: data.map(({ y }) => y),
      held: data.map(({ held }) => held),
      design: data.map(({ x }) => x),
    });
    expected.coef.forEach((coefficient, i) => {
      expect(digits(found?.coefficients[i] as number, coefficient)).toBeGreaterThan(9);
    });
    expect(digits(found?.scale as number, expected.sigma)).toBeGreaterThan(9);
    expect(digits(found?.logLikelihood as number, expected.loglik_density_of_log_t)).toBeGreaterThan(12);
  });

  test("published figures: NIST handbook 8.4.2.1 prints -19.906, 0.863 and 0.772", () => {
    const { coef, sigma } = regressions.nistArrhenius;
    expect(coef.map((value) => Number(value).toFixed(3))).toEqual(["-19.906", "0.863"]);
    expect(Number(sigma).toFixed(3)).toBe("0.772");
  });
});

// One linear and one other parameter, as τ beside the pickup: y = b₁·f(x; b₂). The inner solver finds b₁, the summits b₂.
describe("NIST StRD sets of the same structure, without a start value", () => {
  type Model = (b: number, x: number) => { value: number; slope: number };
  const sets: [keyof typeof models, { certified: number[]; rss: number; x: number[]; y: number[] }][] = [
    ["Misra1a", strd.Misra1a],
    ["Misra1b", strd.Misra1b],
    ["Misra1c", strd.Misra1c],
    ["Misra1d", strd.Misra1d],
    ["BoxBOD", strd.BoxBOD],
    ["DanWood", strd.DanWood],
  ];
  const models = {
    Misra1a: (b, x) => ({ value: -Math.expm1(-b * x), slope: x * Math.exp(-b * x) }),
    Misra1b: (b, x) => ({ value: 1 - (1 + (b * x) / 2) ** -2, slope: x * (1 + (b * x) / 2) ** -3 }),
    Misra1c: (b, x) => ({ value: 1 - (1 + 2 * b * x) ** -0.5, slope: x * (1 + 2 * b * x) ** -1.5 }),
    Misra1d: (b, x) => ({ value: (b * x) / (1 + b * x), slope: x / (1 + b * x) ** 2 }),
    BoxBOD: (b, x) => ({ value: -Math.expm1(-b * x), slope: x * Math.exp(-b * x) }),
    DanWood: (b, x) => ({ value: x ** b, slope: x ** b * Math.log(x) }),
  } satisfies Record<string, Model>;

  test.each(sets)(
    "%s: both parameters and the residual sum of squares to nine digits",
    (name, { certified, rss, x, y }) => {
      const held = y.map(() => false);
      interface At extends Height {
        readonly first: number;
        readonly squares: number;
      }
      const at = (lnB: number): At => {
        const terms = x.map((value) => models[name](Math.exp(lnB), value));
        const best = likeliest({ y, held, design: terms.map(({ value }) => [value]) });
        const first = best?.coefficients[0] as number;
        const slope =
          terms.reduce((sum, term, i) => sum + (best?.pulls[i] as number) * first * term.slope, 0) * Math.exp(lnB);
        return {
          x: lnB,
          height: best?.logLikelihood as number,
          slope,
          first,
          squares: (best?.scale as number) ** 2 * y.length,
        };
      };
      const scan = Array.from({ length: 60 }, (_, i) => at(-12 + i * 0.25));
      const tops = summits(scan, at).sort((a, b) => b.height - a.height);
      expect(digits(tops[0]?.first as number, certified[0] as number)).toBeGreaterThan(9);
      expect(digits(Math.exp(tops[0]?.x as number), certified[1] as number)).toBeGreaterThan(9);
      expect(digits(tops[0]?.squares as number, rss)).toBeGreaterThan(9);
    },
  );
});

describe("the censored solver at its edges", () => {
  const design = (n: number) => Array.from({ length: n }, () => [1]);

  test("nothing held: mean and root mean square, hand-worked", () => {
    const found = likeliest({ y: [1, 2, 6], held: [false, false, false], design: design(3) });
    expect(found?.coefficients[0]).toBeCloseTo(3, 14);
    expect(found?.scale).toBeCloseTo(Math.sqrt((4 + 1 + 9) / 3), 14);
    expect(found?.pulls.reduce((sum, pull) => sum + pull, 0)).toBeCloseTo(0, 14);
  });

  test("a hold that ended long before changes nothing, one that went far beyond moves the mean up", () => {
    const y = [1, 2, 6];
    const held = [false, false, false, true];
    const early = likeliest({ y: [...y, -500], held, design: design(4) });
    expect(early?.coefficients[0]).toBeCloseTo(3, 12);
    const late = likeliest({ y: [...y, 9], held, design: design(4) });
    expect(late?.coefficients[0]).toBeGreaterThan(4);
  });

  test("a design that cannot be told apart has no answer", () => {
    expect(
      likeliest({
        y: [1, 2],
        held: [false, false],
        design: [
          [1, 2],
          [2, 4],
        ],
      }),
    ).toBeUndefined();
  });
});
