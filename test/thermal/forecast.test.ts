import { compared } from "../../src/thermal/compare";
import { fittedTo } from "../../src/thermal/fit";
import type { Fitted } from "../../src/thermal/fitted";
import { forecast, holdProbability } from "../../src/thermal/forecast";
import type { Trial } from "../../src/thermal/trial";
import published from "./fits.json";

const observations = (id: string): Trial[] =>
  (published.cases.find((one) => one.id.startsWith(id))?.observations ?? []).map(({ I, t, censored, Ip }) => ({
    current: I,
    seconds: t,
    held: censored,
    preload: Ip,
  }));
const fits = { F3: fittedTo(observations("F3")), F5: fittedTo(observations("F5")), F7: fittedTo(observations("F7")) };

describe("forecasts", () => {
  // mpmath, 50 digits: see fits.json
  test.each(
    published.cases
      .filter(({ expected }) => expected.predictions)
      .flatMap(({ id, expected }) =>
        (expected.predictions ?? []).map((p) => [id.slice(0, 2) as "F3" | "F5", p] as const),
      ),
  )(
    "%s at $I A after $Ip A: the median, and where the pickup is a plain hill the prediction interval by Student's t",
    (id, { I, Ip, median, pi95_t: [low = 0, high = 0] }) => {
      const found = forecast(fits[id], { current: I, preload: Ip });
      expect(Math.abs((found.median as number) / median - 1)).toBeLessThan(1e-12);
      if (id === "F3") {
        // F3's pickup is bounded by a hold on one side only: from its whole profile, wider on the late side
        expect(found.from).toBe("profile");
        if (I === 27) expect(found.high).toBeGreaterThan(high);
        return;
      }
      expect(found.from).toBe("standard errors");
      expect(Math.abs((found.low as number) / low - 1)).toBeLessThan(1e-9);
      expect(Math.abs((found.high as number) / high - 1)).toBeLessThan(1e-9);
    },
  );

  test("mixed over the profile, a plain hill gives the same interval as its standard errors", () => {
    // The same trials, with the covariance taken away: only the profile is left.
    const { covariance: _, ...profileOnly } = fits.F5;
    for (const shot of [
      { current: 32, preload: 8 },
      { current: 80, preload: 0 },
      { current: 24, preload: 0 },
    ]) {
      const [usual, mixed] = [forecast(fits.F5, shot), forecast(profileOnly, shot)];
      expect(mixed.from).toBe("profile");
      expect(Math.abs(Math.log((mixed.low as number) / (usual.low as number)))).toBeLessThan(0.01);
      expect(Math.abs(Math.log((mixed.high as number) / (usual.high as number)))).toBeLessThan(0.01);
    }
  });

  test("inside the pickup's limits it may hold: no upper limit; below them it holds", () => {
    expect(forecast(fits.F7, { current: 20, preload: 0 })).toMatchObject({ high: "no limit", from: "profile" });
    expect(forecast(fits.F7, { current: 17, preload: 0 })).toMatchObject({
      low: "holds",
      median: "holds",
      high: "no limit",
    });
  });

  test("more confidence is never narrower, a warm start never later", () => {
    for (const one of Object.values(fits))
      for (const current of [27, 33, 60]) {
        const [half, most] = [0.5, 0.99].map((confidence) => forecast(one, { current, preload: 0 }, confidence));
        expect(most?.low).toBeLessThanOrEqual(half?.low as number);
        if (most?.high !== "no limit") expect(most?.high).toBeGreaterThanOrEqual(half?.high as number);
        expect(forecast(one, { current, preload: 10 }).median).toBeLessThan(
          forecast(one, { current, preload: 0 }).median as number,
        );
      }
  });
});

describe("the probability to hold", () => {
  const at = (fitted: Fitted, current: number, seconds: number) =>
    holdProbability(fitted, { current, preload: 0 }, seconds) as number;

  test("is 1 up to the pickup's lower limit and nowhere above it", () => {
    for (const one of Object.values(fits)) {
      const low = one.pickup.low as number;
      expect(at(one, low, 1e7)).toBe(1);
      expect(at(one, low * 1.000001, 1e-3)).toBeLessThan(1);
      expect(at(one, 2 * low, 1e-9)).toBeLessThan(1);
    }
  });

  test("falls with time and with current, between 0 and 1", () => {
    for (const one of Object.values(fits))
      for (const current of [19, 21, 25.5, 30, 51]) {
        const over = [0.1, 1, 5, 20, 60, 200, 600, 3600].map((seconds) => at(one, current, seconds));
        over.forEach((p, i) => {
          expect(p).toBeGreaterThanOrEqual(0);
          expect(p).toBeLessThanOrEqual(over[i - 1] ?? 1);
          expect(at(one, current * 1.05, [0.1, 1, 5, 20, 60, 200, 600, 3600][i] as number)).toBeLessThanOrEqual(
            p + 1e-12,
          );
        });
      }
  });

  test("at the prediction limits it is what they promise", () => {
    for (const one of [fits.F3, fits.F7])
      for (const current of [28, 40]) {
        const { low, high } = forecast(one, { current, preload: 0 });
        expect(at(one, current, low as number)).toBeCloseTo(0.975, 10);
        expect(at(one, current, high as number)).toBeCloseTo(0.025, 10);
      }
  });

  test("is not known where the pickup has no lower limit, or no interval at all", () => {
    const open: Fitted = { ...fits.F5, pickup: { ...fits.F5.pickup, low: "no limit" } };
    expect(holdProbability(open, { current: 30, preload: 0 }, 5)).toBe("not known");
    const exact = fittedTo(observations("F1"));
    expect(holdProbability(exact, { current: 30, preload: 0 }, 5)).toBe("not known");
    expect(forecast(exact, { current: 30, preload: 0 })).toMatchObject({ low: "not known", high: "not known" });
  });

  test("a preload above a possible pickup counts as a trip", () => {
    expect(holdProbability(fits.F7, { current: 30, preload: 19 }, 1e-6)).toBeLessThan(0.7);
  });
});

describe("two samples of times", () => {
  test("the ratio of medians with its pooled t interval", () => {
    // scipy ttest_ind on ln t, equal variances, with its confidence interval
    const found = compared([41, 44, 39.5, 46], [36.2, 33.9, 38]);
    expect(found.ratio).toBeCloseTo(0.8459267464265421, 12);
    expect(found.low).toBeCloseTo(0.7455925302173232, 11);
    expect(found.high).toBeCloseTo(0.9597629151558379, 11);
  });

  test("one as-found time against three repeats", () => {
    // numpy and scipy.stats.t, by the same formula
    const found = compared([52], [36.2, 33.9, 38]);
    expect(found.ratio).toBeCloseTo(0.6921931196914627, 12);
    expect(found.low).toBeCloseTo(0.5207070669833472, 11);
    expect(found.high).toBeCloseTo(0.9201551992063183, 11);
  });

  test("without scatter there is a ratio and no interval; one against one is refused", () => {
    expect(compared([40, 40, 40], [50, 50])).toMatchObject({ low: "not known", high: "not known" });
    expect(compared([40, 40, 40], [50, 50]).ratio).toBeCloseTo(1.25, 12);
    expect(() => compared([40], [50])).toThrow(/repeat the trial, rested, at least once\.$/);
  });
});
