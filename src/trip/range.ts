import { timeConstants } from "./body";
import type { HoldPoint, RatedClass, TripPoint } from "./characteristic";
import { type Bench, sameMultiple } from "./conditions";
import type { Extreme } from "./envelope";

/** Which line gave an edge of the range. */
type Line =
  | "holds" // at or below the rating: need never trip
  | "hold test" // up to the hold multiple: as long as the test lasts
  | "printed" // a printed point from its own start state
  | "floor" // no trip so soon below the magnetic band
  | "floor in warm air" // the same, by a strip that the air makes quicker
  | "no minimum" // the document sets none
  | "quickest body"
  | "slowest body"
  | "may hold" // between the hold and the trip multiple
  | "own band" // a row, or between two rows, of the tester's own
  | "magnetic"; // the magnetic release may, or must, have its part

export interface Edge {
  /** s; Infinity: for ever. */
  readonly seconds: number;
  readonly line: Line;
  readonly body?: Extreme;
  readonly point?: HoldPoint | TripPoint;
}

/** What a sound breaker may do at one current. */
export interface TripRange {
  /** The current as a multiple of the rating, and the multiple at calibration temperature that loads the strip alike. */
  readonly multiple: number;
  readonly scaled: number;
  readonly shortest: Edge;
  readonly longest: Edge;
  /** The magnetic band is not known, so the shortest time is the strip's alone. */
  readonly thermalOnly: boolean;
}

/** Shortest and longest trip time of a sound breaker at a steady current, A. */
export const tripRange = (bench: Bench, current: number): TripRange => {
  const multiple = current / bench.rating;
  const scaled = printedMultiple(bench, multiple / bench.factor);
  return {
    multiple,
    scaled,
    shortest: shortestEdge(bench, current, scaled),
    longest: longestEdge(bench, current, scaled),
    thermalOnly: bench.magnetic === undefined,
  };
};

/** A multiple within 1e-9 of a printed one counts as that one. */
const printedMultiple = ({ ratedClass: { holdMultiple, hold, trips } }: Bench, multiple: number): number => {
  if (sameMultiple(multiple, holdMultiple)) return holdMultiple;
  if (hold && sameMultiple(multiple, hold.multiple)) return hold.multiple;
  for (const point of trips) if (sameMultiple(multiple, point.multiple)) return point.multiple;
  return multiple;
};

/** The trip point that was printed for just this multiple from just this start. */
const printedTrip = ({ ratedClass: { trips }, start, startMultiple }: Bench, scaled: number): TripPoint | undefined => {
  for (const point of trips)
    if (
      scaled === point.multiple &&
      (point.after === undefined ? start === 0 : sameMultiple(startMultiple, point.after))
    )
      return point;
  return undefined;
};

const notBelow = (current: number, edge: number): boolean => current >= edge || sameMultiple(current, edge);

// The edges that need no numbers of their own.
const holds: Edge = { seconds: Infinity, line: "holds" };
const mayHold: Edge = { seconds: Infinity, line: "may hold" };
const noMinimum: Edge = { seconds: 0, line: "no minimum" };
const mayTripAtOnce: Edge = { seconds: 0, line: "magnetic" };

const shortestEdge = (bench: Bench, current: number, scaled: number): Edge => {
  const { magnetic, ratedClass, envelope, start } = bench;
  // First of all: cold air lifts the hold edge, not the magnetic band, and a low setting may come to lie below it.
  if (magnetic && current > magnetic.lower && !sameMultiple(current, magnetic.lower)) return mayTripAtOnce;
  if (notBelow(bench.holdEdge, current)) {
    const atRating = notBelow(1, scaled) && notBelow(bench.rating, current);
    return ratedClass.holdSeconds === undefined || atRating
      ? holds
      : { seconds: ratedClass.holdSeconds, line: "hold test" };
  }
  if (!ratedClass.hold) return noMinimum;
  if (start === 0 && scaled === ratedClass.hold.multiple)
    return { seconds: ratedClass.hold.seconds, line: "printed", point: ratedClass.hold };
  const body = envelope.shortest(scaled * scaled, start);
  const { floor } = ratedClass;
  // From a warm start the document says nothing of so short a time.
  const least = floor && start === 0 ? leastFromCold(ratedClass, floor, scaled) : 0;
  if (floor && body.seconds < least)
    return { seconds: least, line: least < floor.seconds ? "floor in warm air" : "floor", point: floor };
  return { seconds: body.seconds, line: "quickest body", body };
};

/**
 * Below the magnetic band no release trips a breaker within the floor's seconds: printed at the calibration temperature, from cold.
 * Air moves the strip only, so it counts by the multiple that loads the strip alike. In warm air that multiple passes the printed
 * one before the current reaches the magnetic band; there a strip that keeps the printed test takes at least this share of its
 * time, ln(m²/(m² − p²)) at the one multiple ÷ at the other, which is least for the highest pickup.
 */
const leastFromCold = ({ trips }: RatedClass, floor: HoldPoint, scaled: number): number => {
  if (notBelow(floor.multiple, scaled)) return floor.seconds;
  const top = Math.min(...trips.map(({ multiple }) => multiple)) ** 2;
  const taken = (multiple: number): number => timeConstants(multiple ** 2, 0, top, 0);
  return (floor.seconds * taken(scaled)) / taken(floor.multiple);
};

const longestEdge = (bench: Bench, current: number, scaled: number): Edge => {
  const { magnetic } = bench;
  const edge = thermalLongest(bench, scaled);
  if (magnetic?.seconds !== undefined && notBelow(current, magnetic.upper) && edge.seconds > magnetic.seconds)
    return { seconds: magnetic.seconds, line: "magnetic" };
  return edge;
};

const thermalLongest = (bench: Bench, scaled: number): Edge => {
  const point = printedTrip(bench, scaled);
  if (point) return { seconds: point.seconds, line: "printed", point };
  const body = bench.envelope.longest(scaled * scaled, bench.start);
  return body.seconds === Infinity ? mayHold : { seconds: body.seconds, line: "slowest body", body };
};
