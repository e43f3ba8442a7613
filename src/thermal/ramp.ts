import { root } from "../metrology/root";
import type { Body } from "./body";
import { heatWithin } from "./segment";

/** A current turned up evenly by hand: stepped to `from` A at time zero, then `rate` A/s. */
interface Ramp {
  readonly rate: number;
  readonly from: number;
}

/** Heat, A², of a strip `seconds` into a ramp; it started with `heat`, left out: cold. */
export const heatInRamp = (timeConstant: number, { rate, from }: Ramp, seconds: number, heat = 0): number =>
  heatWithin(timeConstant, { seconds, from, to: from + rate * seconds }, heat, seconds);

/** When, s, and at which current, A, a body trips on a ramp. It always does: the current goes on rising. */
export const rampTrip = (body: Body, ramp: Ramp, heat = 0): { seconds: number; current: number } => {
  const trip = body.pickup ** 2;
  if (heat >= trip) return { seconds: 0, current: ramp.from };
  const misses = (t: number): number => heatInRamp(body.timeConstant, ramp, t, heat) - trip;
  // Under a rising current the heat falls at most once before it rises for good, so there is one crossing.
  let late = Math.max(0, (body.pickup - ramp.from) / ramp.rate) + body.timeConstant;
  while (misses(late) < 0) late *= 2;
  const seconds = root(misses, 0, late);
  return { seconds, current: ramp.from + ramp.rate * seconds };
};
