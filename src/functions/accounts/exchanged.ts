import { powerLossLimit } from "../../contact/iec60898";
import { say } from "../../metrology/say";

interface Way {
  readonly rating: number;
  /** W per pole. */
  readonly lossAtRating: number;
}

/** IEC 60898-1 ends here, A. */
const ends = 125;
const far = 2;

const isFarAbove = ({ rating, lossAtRating }: Way): boolean =>
  rating <= ends && lossAtRating > far * powerLossLimit(rating);

/**
 * ENCLOSURE.TOTAL takes losses first, ENCLOSURE.PANEL ratings: two lists that change places look like a hot board, and so does a
 * loss of all poles given for one.
 */
export const exchangedCaution = (ways: readonly Way[]): readonly string[] => {
  const way = ways.find(isFarAbove);
  return way
    ? [
        `${say(way.lossAtRating, "W")} a pole at ${say(way.rating, "A")} is more than twice what IEC 60898-1 allows (from memory): is it the loss of one pole alone, and not exchanged with the rating?`,
      ]
    : [];
};
