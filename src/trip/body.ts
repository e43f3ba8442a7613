import { timeConstantsToTrip } from "../thermal/body";
import type { TripPoint } from "./characteristic";

// A body is one first-order strip: pickup p (a multiple of the rating) and time constant τ. Near the lowest trip multiple P the
// pickup loses its digits, so a body is named by its gap δ = P² − p² instead, and the search runs in u = ln δ.

/** ln((m² − θ₀)/(m² − p²)): how many time constants a steady multiple takes (its square) from state θ₀ to the trip state p². */
export const timeConstants = (square: number, start: number, top: number, gap: number): number =>
  timeConstantsToTrip(top - gap - start, square - top + gap);

/** The slowest time constant, s, with which a body still trips within a printed point's time. */
export const slowest = (point: TripPoint, top: number, gap: number): number => {
  if (point.after === undefined) return point.seconds / timeConstants(point.multiple ** 2, 0, top, gap);
  return point.seconds / -Math.log(remainder(point, top, gap));
};

/**
 * For a trip straight after a hold of the same duration: the share x = e^(−T/τ) left of the first stage, where the state just
 * reaches p² at the end of the second: m₁²x² + (m₂² − m₁²)x = m₂² − p², in the form that does not cancel.
 */
const remainder = (point: TripPoint, top: number, gap: number): number => {
  const first = (point.after as number) ** 2;
  const step = point.multiple ** 2 - first;
  const left = point.multiple ** 2 - top + gap;
  return (2 * left) / (step + Math.sqrt(step * step + 4 * first * left));
};

/** d ln(slowest)/du. */
export const slowestSlope = (point: TripPoint, top: number, gap: number): number => {
  if (point.after === undefined) {
    const square = point.multiple ** 2;
    return gap / ((square - top + gap) * timeConstants(square, 0, top, gap));
  }
  const first = point.after ** 2;
  const x = remainder(point, top, gap);
  return -gap / ((2 * first * x + point.multiple ** 2 - first) * x * Math.log(x));
};
