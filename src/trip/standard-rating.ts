import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import type { Source } from "../metrology/source";
import { preferredRatings, preferredSource } from "./iec60898-tables";
import { continuousFactor, standardRatings, standardRatingsSource } from "./nfpa70";

/** A list of ratings that are made. */
export interface RatingList {
  readonly name: string;
  readonly ratings: readonly number[];
  readonly source: Source;
  /** A share of a continuous load that the list's code adds before a rating is chosen. */
  readonly continuousAdds: number;
}

export const ratingLists = [
  {
    name: "NEC 240.6(A)",
    ratings: standardRatings,
    source: standardRatingsSource,
    continuousAdds: continuousFactor - 1,
  },
  { name: "IEC 60898-1", ratings: preferredRatings, source: preferredSource, continuousAdds: 0 },
] as const satisfies readonly RatingList[];

/** The smallest rating of the list that is at least this current, A. */
export const nextStandard = (list: RatingList, current: number): number => {
  const found = list.ratings.find((rating) => rating >= current * (1 - 1e-12));
  if (found === undefined)
    throw new NoAnswer(
      `load: ${list.name} ends at ${list.ratings.at(-1)} A, below the ${sayNumber(current)} A that are needed.`,
    );
  return found;
};
