import { studentQuantile } from "../metrology/student";
import { atPickup } from "./at-pickup";
import { dropAt, type Limits, limits95 } from "./fit-limits";
import type { End, Estimate, Fitted, ProfileRow } from "./fitted";
import { type NextTrial, refuseRunaway, refuseUnidentifiable } from "./identifiable";
import { covarianceAt, timeConstantErrorAt } from "./information";
import { nearCrossing, type PickupProfile, pickupProfile } from "./pickup-profile";
import { inOrder, type Trial } from "./trial";

/** Scatter of ln t below which the times lie on a curve exactly: typed from a formula, or as few as there are unknowns. */
const exact = 1e-9;

/**
 * Pickup, time constant and scatter of one breaker by maximum likelihood: ln t = ln t(I; pickup, τ, preload) + σ·ε, a trial
 * that held counting with the probability to hold so long. Throws NoAnswer when the trials cannot tell them.
 */
export const fittedTo = (
  rows: readonly Trial[],
  { leftOut = 0, ...next }: NextTrial & { leftOut?: number } = {},
): Fitted => {
  const trials = inOrder(rows);
  refuseUnidentifiable(trials, next);
  const tripped = trials.filter(({ held }) => !held).length;
  const profile = pickupProfile(trials, tripped > 2 ? dropAtConfidence(confidences[0], tripped) : 0);
  refuseRunaway(trials, profile, next);
  const { best, pinned } = profile;
  const counts = { tripped, held: trials.length - tripped, leftOut, pinned };
  const timeConstant = Math.exp(best.lnTimeConstant);
  if (best.scatter < exact)
    return {
      pickup: unbounded(best.pickup),
      timeConstant: unbounded(timeConstant),
      scatter: unbounded(best.scatter),
      logLikelihood: "not known",
      profile: [],
      ...counts,
    };
  const covariance = pinned ? undefined : covarianceAt(trials, best);
  const limits = tripped > 2 ? limits95(trials, profile) : undefined;
  const estimate = (i: number, value: number, ends?: Limits): Estimate => ({
    value,
    standardError: covariance ? value * Math.sqrt(covariance[i]?.[i] as number) : "not known",
    low: end(ends, "low"),
    high: end(ends, "high"),
  });
  return {
    pickup: estimate(0, best.pickup, limits?.pickup),
    timeConstant: estimate(1, timeConstant, limits?.timeConstant),
    scatter: estimate(2, best.scatter, limits?.scatter),
    logLikelihood: best.logLikelihood,
    covariance,
    profile: tripped > 2 ? profileRows(trials, profile, tripped) : [],
    ...counts,
  };
};

const unbounded = (value: number): Estimate => ({
  value,
  standardError: "not known",
  low: "not known",
  high: "not known",
});

const end = (limits: Limits | undefined, side: "low" | "high"): End =>
  limits ? (limits[side] ?? "no limit") : "not known";

/** One-sided confidences at which the profile is written down, on either side of its top, the farthest first. */
const confidences = [5e-4, 0.002, 0.005, 0.0125, 0.025, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45] as const;

/** How far below its top the likelihood has fallen there. */
const dropAtConfidence = (confidence: number, tripped: number): number =>
  dropAt(studentQuantile(confidence, tripped - 2), tripped);

const profileRows = (trials: readonly Trial[], profile: PickupProfile, tripped: number): ProfileRow[] => {
  const { best, points } = profile;
  const pickups = new Set([best.pickup]);
  for (const confidence of confidences) {
    const level = best.logLikelihood - dropAtConfidence(confidence, tripped);
    pickups.add(nearCrossing(profile, { level, side: "low" }) ?? (points[0]?.pickup as number));
    pickups.add(nearCrossing(profile, { level, side: "high" }) as number);
  }
  return [...pickups]
    .filter((pickup) => pickup < profile.below)
    .sort((a, b) => a - b)
    .map((pickup) => {
      const at = atPickup(trials, pickup);
      return {
        pickup,
        drop: Math.max(0, best.logLikelihood - at.logLikelihood),
        timeConstant: Math.exp(at.lnTimeConstant),
        scatter: at.scatter,
        error: timeConstantErrorAt(trials, at),
      };
    });
};
