import type { Body } from "./body";
import { heatWithin, hottestMoment, type Segment, tripWithin } from "./segment";

/** What a body goes through while a current runs its course. */
interface Course {
  /** Heat, A², at the start and at the end of each segment, up to the one in which it trips. */
  readonly heats: readonly number[];
  /** s from the start; Infinity if it holds. */
  readonly tripSeconds: number;
  /** The highest heat, A², that it reaches; pickup² once it trips. */
  readonly highest: number;
  /** When it is hottest, s from the start. */
  readonly highestSeconds: number;
}

/** Sends a body through segments of current, one after the other, starting with `heat` (A²). */
export const courseOf = (body: Body, segments: readonly Segment[], heat: number): Course => {
  const heats = [heat];
  let now = heat;
  let [highest, highestSeconds] = [heat, 0];
  let elapsed = 0;
  for (const segment of segments) {
    if (segment.seconds > 0) {
      const hottest = hottestMoment(body.timeConstant, segment, now);
      const trip = tripWithin(body, segment, now, hottest);
      if (trip < Infinity)
        return { heats, tripSeconds: elapsed + trip, highest: body.pickup ** 2, highestSeconds: elapsed + trip };
      const peak = heatWithin(body.timeConstant, segment, now, hottest);
      if (peak > highest) [highest, highestSeconds] = [peak, elapsed + hottest];
      now = heatWithin(body.timeConstant, segment, now, segment.seconds);
    }
    heats.push(now);
    elapsed += segment.seconds;
  }
  return { heats, tripSeconds: Infinity, highest, highestSeconds };
};
