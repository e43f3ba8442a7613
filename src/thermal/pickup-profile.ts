import { rootIfAny } from "../metrology/root";
import { type AtPickup, atPickup } from "./at-pickup";
import { type Height, summits } from "./summit";
import type { Trial } from "./trial";

/**
 * A point of the profile: a pickup of a stretch between two held currents. Towards the upper end of a stretch the likelihood
 * climbs or falls with the logarithm of the distance to it, so x = −ln(that distance ÷ the stretch).
 */
interface ProfilePoint extends AtPickup, Height, Place {}

interface Place {
  readonly stretch: Stretch;
  readonly x: number;
}

/** Pickups from (that held current included) up to the next held current or the lowest tripping current (excluded). */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface PickupProfile {
  /** Rising pickups; the likeliest is one of them. */
  readonly points: readonly ProfilePoint[];
  readonly best: ProfilePoint;
  /** The pickup lies above this preload (0: none) and below this tripping current. */
  readonly above: number;
  readonly below: number;
  /** The likeliest pickup is a held current: a hold stands like a wall there. */
  readonly pinned: boolean;
}

/**
 * The likelihood of every pickup that the trials allow; left out between held currents where it lies more than `deepest` below its
 * top. The trials hold at least one trip above every preload.
 */
export const pickupProfile = (trials: readonly Trial[], deepest = Infinity): PickupProfile => {
  const above = Math.max(...trials.map(({ preload }) => preload));
  const below = Math.min(...trials.filter(({ held }) => !held).map(({ current }) => current));
  const walls = [...new Set(trials.filter(({ held }) => held).map(({ current }) => current))]
    .filter((current) => current > above && current < below)
    .sort((a, b) => a - b);
  const stretches = [above, ...walls].map((from, i): Stretch => ({ from, to: walls[i] ?? below }));
  const atWalls = along<Stretch, ProfilePoint>(stretches.slice(1), (stretch, near) =>
    point(trials, { stretch, x: 0 }, near),
  );
  const all: ProfilePoint[] = [];
  let highest = Math.max(...atWalls.map(({ logLikelihood }) => logLikelihood));
  // The most promising stretches first: the others are then seen to lie too deep, and only their held current is kept.
  const promises = stretches.map((stretch, i) => {
    const [lower, upper] = [atWalls[i - 1], atWalls[i]];
    return { stretch, lower, most: lower && upper ? mostBetween(trials, lower, upper) : Infinity };
  });
  for (const { stretch, lower, most } of promises.sort((a, b) => b.most - a.most)) {
    if (lower) all.push(lower);
    if (most < highest - deepest - 1) continue;
    const at = (x: number, near = lower) => point(trials, { stretch, x }, near);
    const scanned = along<number, ProfilePoint>(places(stretch, !lower), at);
    const found = [...scanned, ...summits(lower ? [lower, ...scanned] : scanned, at)];
    highest = Math.max(highest, ...found.map(({ logLikelihood }) => logLikelihood));
    all.push(...found);
  }
  all.sort((a, b) => a.pickup - b.pickup);
  const top = all.reduce((best, one) => (one.logLikelihood > best.logLikelihood ? one : best));
  // Below a long hold the likelihood may reach its top a hair before the held current: that is the held current.
  const wall = all.find(
    ({ x, pickup, logLikelihood }) =>
      x === 0 && Math.abs(pickup - top.pickup) < 1e-6 * pickup && logLikelihood > top.logLikelihood - 1e-6,
  );
  const best = wall ?? top;
  return { points: all, best, above, below, pinned: best.x === 0 };
};

/**
 * No pickup between two neighbouring held currents is likelier than this. There the hold at the upper one only takes away; without it
 * the likelihood runs on smoothly up to that current, so that unless it has a summit in between it is highest at an end.
 */
const mostBetween = (trials: readonly Trial[], lower: ProfilePoint, upper: ProfilePoint): number => {
  const without = trials.filter(({ held, current }) => !held || current > upper.pickup);
  const from = atPickup(without, lower.pickup, upper);
  return from.slope > 0 && upper.slope < 0 ? Infinity : Math.max(from.logLikelihood, upper.logLikelihood);
};

/** One after the other, each being told what came of the one before. */
const along = <T, R>(items: readonly T[], each: (item: T, before: R | undefined) => R): R[] => {
  const done: R[] = [];
  for (const item of items) done.push(each(item, done.at(-1)));
  return done;
};

const pickupAt = ({ from, to }: Stretch, x: number): number => (x === 0 ? from : to - (to - from) * Math.exp(-x));

const point = (trials: readonly Trial[], { stretch, x }: Place, near?: AtPickup): ProfilePoint => {
  const distance = (stretch.to - stretch.from) * Math.exp(-x);
  const at = atPickup(trials, pickupAt(stretch, x), near);
  return { ...at, stretch, x, height: at.logLikelihood, slope: at.slope * distance };
};

/**
 * Where a stretch is looked at: ever closer at its lower end if a preload stands there (the lowest stretch begins above it),
 * then ever further in x, to the last double.
 */
const places = ({ from, to }: Stretch, lowest: boolean): number[] => {
  const close = [1e-12, 1e-10, 1e-8, 1e-6, 1e-5, 1e-4].filter((share) => from > 0 && share * (to - from) > 1e-15 * to);
  const xs = lowest ? [...close, 1e-3, 0.01, 0.03, 0.06, 0.1].map((share) => -Math.log1p(-share)) : [];
  const last = Math.log((to - from) / (2e-15 * to));
  for (let [x, step] = [0.15, 0.15]; x < last; x += step, step *= 1.04) xs.push(x);
  return xs;
};

/** Where, going outward from the likeliest pickup, the profile falls below a level. */
interface Edge {
  readonly level: number;
  readonly side: "low" | "high";
}

/** The pickup at an edge, exactly; undefined if the profile never falls so low. */
export const crossing = (trials: readonly Trial[], profile: PickupProfile, edge: Edge): number | undefined => {
  const cell = cellOf(profile, edge);
  if (typeof cell !== "object") return cell;
  const { inside, outside } = cell;
  const { stretch } = inside;
  const misses = (x: number) => point(trials, { stretch, x }, inside).logLikelihood - edge.level;
  const x = rootIfAny(misses, outside.x, inside.x);
  if (x !== undefined) return pickupAt(stretch, x);
  // Told another point before it, a likelihood may differ in its last digits: enough, where the level lies within those of an end.
  return inside.logLikelihood - edge.level < edge.level - outside.logLikelihood ? inside.pickup : outside.pickup;
};

/** A pickup near an edge, by straight interpolation in the root of the drop: good enough to place rows of a table. */
export const nearCrossing = (profile: PickupProfile, edge: Edge): number | undefined => {
  const cell = cellOf(profile, edge);
  if (typeof cell !== "object") return cell;
  const { inside, outside } = cell;
  const depth = (logLikelihood: number) => Math.sqrt(Math.max(0, profile.best.logLikelihood - logLikelihood));
  const [near, far] = [depth(inside.logLikelihood), depth(outside.logLikelihood)];
  const x = inside.x + ((depth(edge.level) - near) / (far - near)) * (outside.x - inside.x);
  return pickupAt(inside.stretch, x);
};

/** The two neighbours inside and outside an edge, or the edge itself where no search is needed. */
const cellOf = (
  { points, best, above }: PickupProfile,
  { level, side }: Edge,
): { inside: ProfilePoint; outside: ProfilePoint } | number | undefined => {
  const outward = side === "low" ? points : [...points].reverse();
  const i = outward.findIndex(({ logLikelihood, pickup }) => logLikelihood >= level || pickup === best.pickup);
  const inside = outward[i] as ProfilePoint;
  const outside = outward[i - 1];
  // At the very ends the likelihood falls to nothing, but slower than doubles can follow: the last one is the limit.
  if (!outside) return side === "low" && above === 0 ? undefined : inside.pickup;
  // Across a held current there is a step that no double resolves: the wall itself is the limit.
  if (outside.stretch !== inside.stretch) return Math.max(outside.pickup, inside.pickup);
  return inside.logLikelihood > level ? { inside, outside } : inside.pickup;
};
