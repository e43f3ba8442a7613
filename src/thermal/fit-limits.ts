import { normalQuantile } from "../metrology/normal";
import { studentQuantile } from "../metrology/student";
import { atPickup, unexplained } from "./at-pickup";
import { limitAtMost, limitBeside, type Side } from "./conditional";
import { crossing, type PickupProfile } from "./pickup-profile";
import type { Trial } from "./trial";

/** How far ln L may drop inside an interval: n/2·ln(1 + t²/(n − 2)), Student's t instead of χ², exact when nothing is held. */
export const dropAt = (t: number, tripped: number): number => (tripped / 2) * Math.log1p((t * t) / (tripped - 2));

/** Student's t for a two-sided confidence with two quantities fitted to the trips. */
export const studentFactor = (tripped: number, confidence: number): number =>
  studentQuantile((1 + confidence) / 2, tripped - 2);

/** An end that the data do not bound is undefined. */
export interface Limits {
  readonly low?: number;
  readonly high?: number;
}

/** The pickups whose likelihood is above a level. */
export const pickupLimits = (trials: readonly Trial[], profile: PickupProfile, level: number): Limits => ({
  low: crossing(trials, profile, { level, side: "low" }),
  high: crossing(trials, profile, { level, side: "high" }),
});

/**
 * A time constant or scatter belongs to the interval if any pickup allows it. So its limit (as a logarithm) is the farthest of
 * the limits beside each pickup, looked for over the pickups that are above the level themselves. Each held current may leave a
 * summit of its own, so every point of the profile is asked, the most promising first.
 */
const farthest = (
  trials: readonly Trial[],
  profile: PickupProfile,
  { low = 0, high = Infinity }: Limits,
  at: Side,
): number => {
  const inside = profile.points.filter(({ logLikelihood }) => logLikelihood >= at.level);
  const promising = inside
    .map((point, i) => ({ point, i, most: limitAtMost(unexplained(trials, point.pickup), point, at) }))
    .map(({ most, ...point }) => ({ ...point, most: most === undefined ? -Infinity : at.side * most }))
    .sort((a, b) => b.most - a.most);
  let [best, top] = [-Infinity, 0];
  for (const { point, i, most } of promising) {
    if (most <= best) break;
    const reached = at.side * limitBeside(unexplained(trials, point.pickup), point, at);
    if (reached > best) [best, top] = [reached, i];
  }
  const near = inside[top];
  const reach = (pickup: number): number =>
    at.side * limitBeside(unexplained(trials, pickup), atPickup(trials, pickup, near), at);
  const lowest = low > 0 ? low : (inside[0]?.pickup as number);
  const edge = (i: number): number => (i < 0 ? lowest : (inside[i]?.pickup ?? high));
  return at.side * Math.max(best, highest(reach, edge(top - 1), edge(top + 1)));
};

/** The highest value of a function with one top between two ends, by golden section. */
const highest = (f: (x: number) => number, from: number, to: number): number => {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  let best = Math.max(f(a), f(b), fc, fd);
  for (let i = 0; i < 20; i++) {
    if (fc > fd) {
      [b, d, fd] = [d, c, fc];
      c = b - golden * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + golden * (b - a);
      fd = f(d);
    }
    best = Math.max(best, fc, fd);
  }
  return best;
};

/** The time constant (s) whose likelihood is above a level; above an open lower end of the pickup it has no upper limit. */
export const timeConstantLimits = (
  trials: readonly Trial[],
  profile: PickupProfile,
  pickup: Limits,
  level: number,
): Limits => {
  const reach = (side: 1 | -1) => Math.exp(farthest(trials, profile, pickup, { level, side, of: "time constant" }));
  return { low: reach(-1), high: pickup.low === undefined ? undefined : reach(1) };
};

/** The scatter whose likelihood is above a level. */
export const scatterLimits = (
  trials: readonly Trial[],
  profile: PickupProfile,
  pickup: Limits,
  level: number,
): Required<Limits> => {
  const reach = (side: 1 | -1) => Math.exp(farthest(trials, profile, pickup, { level, side, of: "scatter" }));
  return { low: reach(-1), high: reach(1) };
};

/** 95 % of χ² with one degree of freedom. */
const chiSquare95 = normalQuantile(0.975) ** 2;

/**
 * The 95 % limits of all three. A scatter is no location: its likelihood is that of n − 2 degrees of freedom (two quantities are
 * fitted), so its limits are those at a drop larger by n/(n − 2), times √(n/(n − 2)), with the small-sample factor 1 + 1/(3(n − 2))
 * of the likelihood ratio of a variance (Bartlett). Exact to three digits when nothing is held.
 */
export const limits95 = (trials: readonly Trial[], profile: PickupProfile) => {
  const tripped = trials.filter(({ held }) => !held).length;
  const dof = tripped - 2;
  const top = profile.best.logLikelihood;
  const level = top - dropAt(studentFactor(tripped, 0.95), tripped);
  const pickup = pickupLimits(trials, profile, level);
  const spread = tripped / dof;
  const scatterLevel = top - (chiSquare95 / 2) * spread * (1 + 1 / (3 * dof));
  const scatterPickup = pickupLimits(trials, profile, scatterLevel);
  const { low, high } = scatterLimits(trials, profile, scatterPickup, scatterLevel);
  return {
    pickup,
    timeConstant: timeConstantLimits(trials, profile, pickup, level),
    scatter: { low: low * Math.sqrt(spread), high: high * Math.sqrt(spread) },
  };
};
