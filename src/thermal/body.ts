/**
 * A bimetal strip as a body of one time constant. Its *heat* θ is told in A²: the square of the steady current that would keep
 * the strip as warm as it is. Heating and cooling follow dθ/dt = (i² − θ)/τ, and it trips when θ reaches pickup².
 * Currents may as well be multiples of one rating, all of them.
 */
export interface Body {
  /** The current it just carries for ever, A. */
  readonly pickup: number;
  /** s */
  readonly timeConstant: number;
}

/** Where a body starts from: warm from a long steady preload (A), then `rest` seconds without current. Left out: cold. */
interface Start {
  readonly preload?: number;
  readonly rest?: number;
}

/**
 * Time constants until the trip. `missing` is the heat still to come up to the trip, `surplus` how far the final heat lies beyond it
 * (A² both, by differences that keep their digits): ln((i² − θ₀)/(i² − p²)) = ln(1 + missing/surplus). Infinity: never.
 */
export const timeConstantsToTrip = (missing: number, surplus: number): number =>
  missing <= 0 ? 0 : surplus <= 0 ? Infinity : Math.log1p(missing / surplus);

/** Seconds a steady current takes to trip the body; Infinity at or below its pickup, 0 if the start is already hot enough. IEC 60255-149. */
export const secondsToTrip = (body: Body, current: number, { preload = 0, rest = 0 }: Start = {}): number => {
  const { pickup, timeConstant } = body;
  // Written as products of differences: i² − p² would lose its digits near the pickup.
  const rested = preload === 0 || rest === 0 ? 0 : preload * preload * Math.expm1(-rest / timeConstant);
  const missing = (pickup - preload) * (pickup + preload) - rested;
  return timeConstant * timeConstantsToTrip(missing, (current - pickup) * (current + pickup));
};

/** Heat, A², of a strip that starts at `heat` and carries a steady current for some seconds. */
export const heatAfter = (
  timeConstant: number,
  { heat, current, seconds }: { heat: number; current: number; seconds: number },
): number => heat - (current * current - heat) * Math.expm1(-seconds / timeConstant);

/** Seconds without current until the heat has fallen from one value to another; 0 if it lies there already. */
export const secondsToCool = (timeConstant: number, { from, to }: { from: number; to: number }): number =>
  from <= to ? 0 : timeConstant * Math.log(from / to);
