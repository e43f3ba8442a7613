import { root } from "../metrology/root";
import { studentCdfWith } from "../metrology/student";
import { studentFactor } from "./fit-limits";
import type { Fitted, ProfileRow } from "./fitted";
import { lnTimeConstants } from "./trial";

/** A steady current, A, after a long steady preload, A (0: cold). */
export interface Shot {
  readonly current: number;
  readonly preload: number;
}

/** How sure it is that the pickup lies below each profile row: Student's t of the signed root of the likelihood's drop. */
const confidences = ({ profile, pickup, tripped }: Fitted): number[] => {
  const dof = tripped - 2;
  const below = studentCdfWith(dof);
  return profile.map((row) => {
    const t = Math.sqrt(dof * Math.expm1((2 * row.drop) / tripped));
    return below(row.pickup < pickup.value ? -t : t);
  });
};

/** A row between two rows: what runs straight there is the pickup and, in logarithms, pickup²·τ, which far above the pickup is all that counts. */
const between = (a: ProfileRow, b: ProfileRow, share: number): ProfileRow => {
  const straight = (from: number, to: number) => from + share * (to - from);
  const geometric = (from: number, to: number) => from * (to / from) ** share;
  const pickup = straight(a.pickup, b.pickup);
  return {
    pickup,
    drop: straight(a.drop, b.drop),
    timeConstant: geometric(a.timeConstant * a.pickup ** 2, b.timeConstant * b.pickup ** 2) / pickup ** 2,
    scatter: geometric(a.scatter, b.scatter),
    error: geometric(a.error, b.error),
  };
};

/** Cells between two profile rows are averaged at this many places. */
const places = 4;

/**
 * The pickup as the profile tells it: pieces of equal standing with their weights, which add up to 1.
 * What lies beyond the outermost rows is put on them.
 */
const pieces = (fitted: Fitted): { row: ProfileRow; weight: number }[] => {
  const { profile } = fitted;
  const below = confidences(fitted);
  const found: { row: ProfileRow; weight: number }[] = [];
  profile.forEach((row, i) => {
    if (i === 0) found.push({ row, weight: below[0] as number });
    const next = profile[i + 1];
    if (!next) {
      found.push({ row, weight: 1 - (below[i] as number) });
      return;
    }
    const weight = ((below[i + 1] as number) - (below[i] as number)) / places;
    for (let k = 0; k < places; k++) found.push({ row: between(row, next, (k + 0.5) / places), weight });
  });
  return found;
};

/**
 * Probability that the breaker has tripped by ln t: over all pickups that the trials leave open, each with its own time constant
 * and scatter. Beside one pickup the next ln t follows Student's t with n − 1 degrees of freedom; mixed over the pickup that is
 * the usual prediction with n − 2 where the profile is a plain hill, and stays right where it is not.
 */
const trippedBy = (fitted: Fitted, shot: Shot): ((lnSeconds: number) => number) => {
  const n = fitted.tripped;
  const parts = pieces(fitted).map(({ row, weight }) => ({
    weight,
    middle: Math.log(row.timeConstant) + lnTimeConstants(shot, row.pickup).value,
    spread: Math.sqrt((n / (n - 1)) * (row.scatter ** 2 + row.error ** 2)),
  }));
  const below = studentCdfWith(n - 1);
  return (lnSeconds) =>
    parts.reduce((sum, { weight, middle, spread }) => {
      if (middle === Infinity || weight === 0) return sum;
      return sum + weight * (middle === -Infinity ? 1 : below((lnSeconds - middle) / spread));
    }, 0);
};

/**
 * Probability that the breaker carries a current for some seconds. 1 for a current up to the lower limit of its pickup, and never
 * above it; "not known" without that limit.
 */
export const holdProbability = (fitted: Fitted, shot: Shot, seconds: number): number | "not known" => {
  const { low } = fitted.pickup;
  if (typeof low !== "number") return "not known";
  if (shot.current <= low) return 1;
  const held = 1 - trippedBy(fitted, shot)(Math.log(seconds));
  return Math.min(Math.max(held, 0), 1 - Number.EPSILON / 2);
};

/** Time, s, that the next trial takes: median and prediction limits. */
export interface Forecast {
  readonly low: number | "holds" | "not known";
  readonly median: number | "holds";
  readonly high: number | "no limit" | "not known";
  /** From the standard errors, or, where the pickup's likelihood is no plain hill or the current lies within its limits, from its whole profile. */
  readonly from: "standard errors" | "profile" | "nothing";
}

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
