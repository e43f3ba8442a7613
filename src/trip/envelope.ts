import { NoAnswer } from "../metrology/no-answer";
import { root } from "../metrology/root";
import { sayNumber } from "../metrology/say";
import { slowest, timeConstants } from "./body";
import type { HoldPoint, TripPoint } from "./characteristic";
import { type End, endAt, pickupAt, risesAndFalls, type Stretch, secondsOf, stretchesOf, turningEnd } from "./edges";
import { peak } from "./peak";

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
type Measure = (pickup: number, timeConstant: number) => number;

/** Below e^−700 a double holds no digits; a time constant bounded there has long met its limit. */
const lowest = -700;

/**
 * Solves the admissible set once. For a fixed pickup every printed point bounds the time constant from one side, so the set is a
 * strip over u = ln δ (body.ts), and the extremes lie on its edges. Throws NoAnswer where no body meets all the points: where air
 * moves the hold edge against the trip points it may come to lie beyond them.
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
  if (!(top > bottom) || (hold && spare(widest) < 0))
    throw new NoAnswer(
      `trip rise: in this air the hold edge comes to ${sayNumber(holdMultiple)} × as the trip times count it, and no strip that holds there trips as printed at ${sayNumber(Math.sqrt(top))} ×; a larger trip rise is wanted, or leave the ambient out.`,
    );
  // Towards P the trip points leave less and less time; where a hold asks for more than they leave, the set ends.
  const closest = hold && spare(lowest) < 0 ? root(spare, lowest, widest) : lowest;
  const stretches = stretchesOf(governing, top, closest, widest);

  const quickEnds = [widest, closest].map((u) => endAt(top, u, quickest(Math.exp(u)), 0));

  const shortest = (square: number, start: number): Extreme => {
    if (start >= bottom) return { seconds: 0, pickup: holdMultiple, timeConstant: quickest(top - bottom) };
    // With one hold point the time over the pickup rises, falls, or rises and then falls: the least is at an end.
    // (m² below the hold's: rising. Above: S(q) = (b−q)·ln(b/(b−q)) − (a−q)·ln((a−θ₀)/(a−q)) is concave and starts above 0.)
    let [seconds, quick] = [Infinity, quickEnds[0] as End];
    for (const end of quickEnds) {
      const taken = secondsOf(end, square, start, top);
      if (taken < seconds) [seconds, quick] = [taken, end];
    }
    return { seconds, pickup: quick.pickup, timeConstant: quick.timeConstant };
  };

  const longest = (square: number, start: number): Extreme => {
    if (square < top) return never;
    let [seconds, slow] = [-1, (stretches[0] as Stretch).ends[0]];
    // At P itself the strips with p → P take the printed time in the end, from whatever start, but so slowly that no double shows it.
    if (square === top && closest === lowest) seconds = (stretches[0] as Stretch).point.seconds;
    for (const stretch of stretches) {
      for (const end of stretch.ends) {
        const taken = secondsOf(end, square, start, top);
        if (taken > seconds) [seconds, slow] = [taken, end];
      }
      const inside = risesAndFalls(stretch, square, start, top) ? turningEnd(stretch, square, start, top) : undefined;
      const taken = inside ? secondsOf(inside, square, start, top) : 0;
      if (inside && taken > seconds) [seconds, slow] = [taken, inside];
    }
    return { seconds, pickup: slow.pickup, timeConstant: slow.timeConstant };
  };
  const never = { seconds: Infinity, pickup: Math.sqrt(top), timeConstant: Infinity };

  // The logarithm and back would blur the widest gap's pickup, the hold multiple itself, in its last digits.
  const pickupOf = (u: number): number => Math.max(holdMultiple, pickupAt(top, u));
  const least = (measure: Measure): number =>
    -peak((u) => -measure(pickupOf(u), quickest(Math.exp(u))), [[closest, widest]]);
  const most = (measure: Measure): number =>
    peak(
      (u) => measure(pickupOf(u), slowest(governing(u), top, Math.exp(u))),
      stretches.map(({ ends: [low, high] }) => [low.u, high.u]),
    );

  return { shortest, longest, least, most, slowestTimeConstant: slowest(governing(widest), top, top - bottom) };
};
