/** One way of a board: what it loses at its rating and what it carries. */
export interface Way {
  /** W per pole, with the rated current through it. */
  readonly lossAtRating: number;
  /** A */
  readonly rating: number;
  /** A, the same in every pole. */
  readonly load: number;
  readonly poles: number;
  /** The part of the loss that does not follow the current (a coil, electronics): 0 to 1. */
  readonly fixedShare?: number;
}

/**
 * Heat of one way at its load, W. Joule: the loss grows with the square of the current, except the part declared fixed.
 * The resistance is taken as that of the warm, settled pole; it does not change with the load here.
 */
export const wayWatts = ({ lossAtRating, rating, load, poles, fixedShare = 0 }: Way): number => {
  const share = load / rating;
  return poles * lossAtRating * (fixedShare + (1 - fixedShare) * share * share);
};
