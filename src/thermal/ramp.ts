import { root } from "../metrology/root";
import type { Body } from "./body";
import { heatWithin } from "./segment";

/** A current turned up evenly by hand: stepped to `from` A at time zero, then `rate` A/s. */
export interface Ramp {
  readonly rate: number;
  readonly from: number;
}

/** Heat, A², of a strip that started cold, `seconds` into a ramp. */
export const heatInRamp = (timeConstant: number, { rate, from }: Ramp, seconds: number): number =>
  heatWithin(timeConstant, { seconds, from, to: from + rate * seconds }, 0, seconds);

/** When, s, and at which current, A, a cold body trips on a ramp. It always does: the current goes on rising. */
export const rampTrip = (body: Body, ramp: Ramp): { seconds: number; current: number } => {
  const trip = body.pickup ** 2;
  const misses = (t: number): number => heatInRamp(body.timeConstant, ramp, t) - trip;
  // Cold under a rising current the heat only rises, so there is one crossing.
  let late = Math.max(0, (body.pickup - ramp.from) / ramp.rate) + body.timeConstant;
  while (misses(late) < 0) late *= 2;
  const seconds = root(misses, 0, late);
  return { seconds, current: ramp.from + ramp.rate * seconds };
};
