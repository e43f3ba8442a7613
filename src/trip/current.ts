import type { Asked } from "./asked";

/** Beyond this multiple of the rating nothing is searched: no document says what a breaker does there. */
const farthest = 100;

/** The largest current, A, that a sound breaker carries for longer than `seconds` before it may trip. */
export const holdsUpTo = (asked: Asked, seconds: number): number => {
  const holds = (current: number): boolean => asked.rangeAt(current).shortest.seconds > seconds;
  const { from, to } = searched(asked);
  if (holds(to)) return to;
  return settled(asked, edge(holds, holds(from) ? from : 0, to), holds);
};

/** The smallest current, A, at which a sound breaker has tripped within `seconds`; undefined where none is promised. */
export const tripsFrom = (asked: Asked, seconds: number): number | undefined => {
  const lingers = (current: number): boolean => asked.rangeAt(current).longest.seconds > seconds;
  const printed = asked.bench?.magnetic?.seconds;
  // Quicker than its printed magnetic time no document asks a breaker to be.
  if (printed !== undefined && seconds < printed) return undefined;
  const { from, to } = searched(asked);
  if (lingers(to)) return undefined;
  return lingers(from) ? settled(asked, edge(lingers, from, to), (current) => !lingers(current)) : from;
};

const searched = ({ rating, span, bench }: Asked): { from: number; to: number } =>
  span ?? { from: rating * 1e-3, to: Math.max(farthest * rating, bench?.magnetic?.upper ?? 0) };

/** An edge of the band counts for currents within 1e-9 of it, so a search ends that far beside it: name the edge itself, if it will do. */
const settled = ({ rating, bench }: Asked, current: number, willDo: (edge: number) => boolean): number => {
  if (!bench) return current;
  const { holdEdge, tripEdge, magnetic, ratedClass, factor } = bench;
  const printed = ratedClass.trips.map(({ multiple }) => multiple * factor * rating);
  const edges = [rating, factor * rating, holdEdge, tripEdge, magnetic?.lower, magnetic?.upper, ...printed];
  return edges.find((one) => one !== undefined && Math.abs(current - one) <= 2e-9 * one && willDo(one)) ?? current;
};

/** Where a statement that is true at `from` and false at `to` changes, to the last digit: times jump at the edges of the band. */
const edge = (isTrue: (current: number) => boolean, from: number, to: number): number => {
  let [low, high] = [from, to];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return high;
    if (isTrue(middle)) low = middle;
    else high = middle;
  }
};
