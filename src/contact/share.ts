import { powerLossLimit } from "./iec60898";
import { poleWatts } from "./watts";

/** A drop measured on one pole of a breaker: A, V, and its rated current, A. */
interface MeasuredPole {
  readonly current: number;
  readonly drop: number;
  readonly rating: number;
}

/** W that the pole would make at its rating if its resistance stayed as measured: heat goes with the square of the current. */
export const lossAtRating = ({ current, drop, rating }: MeasuredPole): number =>
  poleWatts(current, drop) * (rating / current) ** 2;

/** The loss at the rating as a share of what IEC 60898-1 allows. Throws NoAnswer above 125 A. */
export const shareOfLimit = (pole: MeasuredPole): number => lossAtRating(pole) / powerLossLimit(pole.rating);
