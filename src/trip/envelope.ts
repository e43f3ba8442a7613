import { root } from "../metrology/root";
import { slowest, slowestSlope, timeConstants } from "./body";
import type { HoldPoint, TripPoint } from "./characteristic";

/** What all admissible bodies have in common: pickup at least `holdMultiple`, `hold` not undercut, every trip point met. */
export interface Requirements {
  readonly holdMultiple: number;
  readonly hold?: HoldPoint;
  readonly trips: readonly TripPoint[];
}

/** The body that is the quickest or the slowest at an asked current. */
export interface Extreme {
  /** s; 0 where the document sets no minimum, Infinity where a body need never trip. */
  readonly seconds: number;
  /** Its pickup, as a multiple of the rating, and its time constant, s (both limits that are approached, not always attained). */
  readonly pickup: number;
  readonly timeConstant: number;
}

/** The shortest and the longest time of any admissible body at a steady multiple (its square) from a start state θ₀. */
export interface Envelope {
  shortest(square: number, start: number): Extreme;
  longest(square: number, start: number): Extreme;
  /** The body with the least of a measure that falls with a quicker strip, and with the most of one that rises with a slower strip. */
  least(measure: Measure): number;
  most(measure: Measure): number;
  /** The slowest admissible time constant, s: how long a breaker may take to cool. */
  readonly slowestTimeConstant: number;
}

/** What a body of this pickup (multiple) and time constant, s, does in some test; rises with both. */
export type Measure = (pickup: number, timeConstant: number) => number;

/** Below e^−700 a double holds no digits; a time constant bounded there has long met its limit. */
const lowest = -700;
const samples = 512;

/**
 * Solves the admissible set once. For a fixed pickup every printed point bounds the time constant from one side, so the set is a
 * strip over u = ln δ (body.ts), and the extremes lie on its edges.
 */
export const envelopeOf = ({ holdMultiple, hold, trips }: Requirements): Envelope => {
  const top = Math.min(...trips.map(({ multiple }) => multiple)) ** 2;
  const bottom = holdMultiple ** 2;
  const widest = Math.log(top - bottom);
  const quickest = (gap: number): number => (hold ? hold.seconds / timeConstants(hold.multiple ** 2, 0, top, gap) : 0);
  const governing = (u: number): TripPoint => {
    const gap = Math.exp(u);
    return trips.reduce((least, point) => (slowest(point, top, gap) < slowest(least, top, gap) ? point : least));
  };
  const spare = (u: number): number =>
    Math.log(slowest(governing(u), top, Math.exp(u))) - Math.log(quickest(Math.exp(u)));
  // Towards P the trip points leave less and less time; where a hold asks for more than they leave, the set ends.
  const closest = hold && spare(lowest) < 0 ? root(spare, lowest, widest) : lowest;
  const stretches = stretchesOf(governing, top, closest, widest);

  const shortest = (square: number, start: number): Extreme => {
    if (start >= bottom) return { seconds: 0, pickup: holdMultiple, timeConstant: quickest(top - bottom) };
    // With one hold point the time over the pickup rises, falls, or rises and then falls: the least is at an end.
    // (m² below the hold's: rising. Above: S(q) = (b−q)·ln(b/(b−q)) − (a−q)·ln((a−θ₀)/(a−q)) is concave and starts above 0.)
    const atEnds = [widest, closest].map((u) => bodyAt(u, quickest(Math.exp(u)), square, start, top));
    return atEnds.reduce((least, body) => (body.seconds < least.seconds ? body : least));
  };

  const longest = (square: number, start: number): Extreme => {
    if (square < top)
      return {
        seconds: Infinity,
        pickup: Math.sqrt(top),
        timeConstant: slowest(governing(closest), top, Math.exp(closest)),
      };
    const candidates = stretches.flatMap(({ from, to, point }) => {
      const slope = (u: number): number => {
        const gap = Math.exp(u);
        return slowestSlope(point, top, gap) - gap / ((square - top + gap) * timeConstants(square, start, top, gap));
      };
      const inside = slope(from) > 0 && slope(to) < 0 ? [root(slope, from, to)] : [];
      return [from, to, ...inside].map((u) => bodyAt(u, slowest(point, top, Math.exp(u)), square, start, top));
    });
    return candidates.reduce((most, body) => (body.seconds > most.seconds ? body : most));
  };

  const least = (measure: Measure): number =>
    -peak((u) => -measure(pickupAt(top, u), quickest(Math.exp(u))), [{ from: closest, to: widest }]);
  const most = (measure: Measure): number =>
    peak((u) => measure(pickupAt(top, u), slowest(governing(u), top, Math.exp(u))), stretches);

  return { shortest, longest, least, most, slowestTimeConstant: slowest(governing(widest), top, top - bottom) };
};

/** The stretches of u in which one trip point governs, from the closest gap to the widest. */
const stretchesOf = (governing: (u: number) => TripPoint, top: number, from: number, to: number) => {
  const stretches: { from: number; to: number; point: TripPoint }[] = [];
  let start = from;
  let point = governing(from);
  for (let i = 1; i <= samples; i++) {
    const u = from + ((to - from) * i) / samples;
    const next = governing(u);
    if (next !== point || i === samples) {
      const end =
        next === point
          ? u
          : root(
              (v) => Math.log(slowest(next, top, Math.exp(v)) / slowest(point, top, Math.exp(v))),
              from + ((to - from) * (i - 1)) / samples,
              u,
            );
      stretches.push({ from: start, to: end, point });
      if (next !== point && i === samples) stretches.push({ from: end, to, point: next });
      start = end;
      point = next;
    }
  }
  return stretches;
};

const pickupAt = (top: number, u: number): number => Math.sqrt(top - Math.exp(u));

const scan = 48;

/** The most of f over some stretches: a scan finds the place, golden section the top. */
const peak = (f: (u: number) => number, stretches: readonly { from: number; to: number }[]): number => {
  let most = -Infinity;
  for (const { from, to } of stretches) {
    const at = (i: number): number => from + ((to - from) * i) / scan;
    const values = Array.from({ length: scan + 1 }, (_, i) => f(at(i)));
    const best = values.indexOf(Math.max(...values));
    let [low, high] = [at(Math.max(0, best - 1)), at(Math.min(scan, best + 1))];
    for (let i = 0; i < 60; i++) {
      const step = ((Math.sqrt(5) - 1) / 2) * (high - low);
      if (f(high - step) > f(low + step)) high = low + step;
      else low = high - step;
    }
    most = Math.max(most, values[best] as number, f((low + high) / 2));
  }
  return most;
};

/** A body and its time at the asked current. A pickup at or above the multiple never trips; a start at or above the pickup trips at once. */
const bodyAt = (u: number, timeConstant: number, square: number, start: number, top: number): Extreme => {
  const gap = Math.exp(u);
  const pickup = pickupAt(top, u);
  if (square - top + gap <= 0) return { seconds: Infinity, pickup, timeConstant };
  return { seconds: Math.max(0, timeConstant * timeConstants(square, start, top, gap)), pickup, timeConstant };
};
