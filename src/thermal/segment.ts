import { root } from "../metrology/root";
import { type Body, timeConstantsToTrip } from "./body";

/** A stretch of current: it runs straight from one value (A) to another while `seconds` pass. A step has from = to. */
export interface Segment {
  readonly seconds: number;
  readonly from: number;
  readonly to: number;
}

/**
 * 1 − e⁻ˣ, x − (1 − e⁻ˣ) and x² − 2(x − (1 − e⁻ˣ)): what a constant, a linear and a square current-squared leave in the strip
 * after x time constants. By series for small x, where the differences cancel.
 */
const gains = (x: number): readonly [number, number, number] => {
  const first = -Math.expm1(-x);
  if (x > 1) return [first, x - first, x * x - 2 * (x - first)];
  let term = (x * x) / 2;
  let [second, third] = [term, 0];
  for (let k = 3; Math.abs(term) > 1e-17 * second; k++) {
    term *= -x / k;
    second += term;
    third -= 2 * term;
  }
  return [first, second, third];
};

/** Heat, A², `seconds` into a segment that was entered with `heat`: exact, no time step. */
export const heatWithin = (timeConstant: number, segment: Segment, heat: number, seconds: number): number => {
  if (seconds === 0) return heat;
  const slope = (timeConstant * (segment.to - segment.from)) / segment.seconds;
  const [constant, linear, square] = gains(seconds / timeConstant);
  return heat + (segment.from ** 2 - heat) * constant + 2 * segment.from * slope * linear + slope * slope * square;
};

/**
 * The hottest moment of a segment, s from its start. While the current rises or stays the strip ends warmest, or began warmest;
 * while it falls the heat has at most one peak, where it meets the square of the current.
 */
export const hottestMoment = (timeConstant: number, segment: Segment, heat: number): number => {
  const { seconds, from, to } = segment;
  const end = heatWithin(timeConstant, segment, heat, seconds);
  if (to >= from) return end > heat ? seconds : 0;
  if (heat >= from * from) return 0;
  if (end <= to * to) return seconds;
  const current = (t: number): number => from + ((to - from) * t) / seconds;
  return root((t) => current(t) ** 2 - heatWithin(timeConstant, segment, heat, t), 0, seconds);
};

/** Seconds into the segment at which the body trips; Infinity if it holds. `hottest` is the segment's hottest moment. */
export const tripWithin = (body: Body, segment: Segment, heat: number, hottest: number): number => {
  const trip = body.pickup ** 2;
  if (heat >= trip) return 0;
  if (segment.from === segment.to) {
    const surplus = (segment.from - body.pickup) * (segment.from + body.pickup);
    const seconds = body.timeConstant * timeConstantsToTrip(trip - heat, surplus);
    return seconds <= segment.seconds ? seconds : Infinity;
  }
  // Up to its hottest moment the heat crosses the trip once at most (a rising current may let it dip first).
  const misses = (t: number): number => heatWithin(body.timeConstant, segment, heat, t) - trip;
  return hottest > 0 && misses(hottest) >= 0 ? root(misses, 0, hottest) : Infinity;
};
