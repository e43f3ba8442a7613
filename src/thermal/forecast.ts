import { root } from "../metrology/root";
import { studentFactor } from "./fit-limits";
import type { Fitted } from "./fitted";
import { type Shot, trippedBy } from "./mixture";
import { lnTimeConstants } from "./trial";

/**
 * Probability that the breaker carries a current for some seconds. 1 for a current up to the lower limit of its pickup, and never
 * above it; "not known" without that limit.
 */
export const holdProbability = (fitted: Fitted, shot: Shot, seconds: number): number | "not known" => {
  const { low } = fitted.pickup;
  if (typeof low !== "number") return "not known";
  if (Math.max(shot.current, shot.preload) <= low) return 1;
  const held = 1 - trippedBy(fitted, shot)(Math.log(seconds));
  return Math.min(Math.max(held, 0), 1 - Number.EPSILON / 2);
};

/** Time, s, that the next trial takes: median and prediction limits. */
interface Forecast {
  readonly low: number | "holds" | "not known";
  readonly median: number | "holds";
  readonly high: number | "no limit" | "not known";
  /** From the standard errors, or, where the pickup's likelihood is no plain hill or the current lies within its limits, from its whole profile. */
  readonly from: "standard errors" | "profile" | "nothing";
}

/** The next trial of a breaker whose log was fitted; the time lies between the two limits with that `confidence`. */
export const forecast = (fitted: Fitted, shot: Shot, confidence = 0.95): Forecast => {
  const { pickup, timeConstant, tripped, covariance, profile } = fitted;
  const { value, slope } = lnTimeConstants(shot, pickup.value);
  const lnMedian = Math.log(timeConstant.value) + value;
  const median = value === Infinity ? "holds" : Math.exp(lnMedian);
  if (covariance && isHill(fitted) && typeof pickup.high === "number" && shot.current > pickup.high) {
    // ln t moves with ln τ one to one, with ln pickup by its slope.
    const gradient = [slope * pickup.value, 1, 0];
    const variance = covariance.reduce(
      (sum, row, i) =>
        sum + row.reduce((part, c, k) => part + c * (gradient[i] as number) * (gradient[k] as number), 0),
      fitted.scatter.value ** 2,
    );
    const margin = studentFactor(tripped, confidence) * Math.sqrt((tripped / (tripped - 2)) * variance);
    return { low: Math.exp(lnMedian - margin), median, high: Math.exp(lnMedian + margin), from: "standard errors" };
  }
  if (profile.length === 0) return { low: "not known", median, high: "not known", from: "nothing" };
  const cdf = trippedBy(fitted, shot);
  const low = quantile(cdf, lnMedian, (1 - confidence) / 2);
  const high = quantile(cdf, lnMedian, (1 + confidence) / 2);
  return {
    low: low === Infinity ? "holds" : typeof median === "number" ? Math.min(low, median) : low,
    median,
    high: high === Infinity ? "no limit" : typeof median === "number" ? Math.max(high, median) : high,
    from: "profile",
  };
};

/** The pickup's limits lie about evenly around it, so that standard errors tell the truth. */
const isHill = ({ pickup }: Fitted): boolean => {
  const { low, value, high } = pickup;
  if (typeof low !== "number" || typeof high !== "number") return false;
  const lopsided = Math.log(high / value) / Math.log(value / low);
  return lopsided > 1 / 3 && lopsided < 3;
};

/** The time, s, by which a share has tripped; Infinity if so many never do. */
const quantile = (cdf: (lnSeconds: number) => number, near: number, share: number): number => {
  const misses = (lnSeconds: number) => cdf(lnSeconds) - share;
  const start = Number.isFinite(near) ? near : 5;
  let [low, high] = [start - 1, start + 1];
  while (misses(low) > 0 && low > -60) low -= start - low;
  while (misses(high) < 0 && high < 60) high += high - start;
  if (misses(high) < 0) return Infinity;
  return misses(low) > 0 ? 0 : Math.exp(root(misses, low, high));
};
