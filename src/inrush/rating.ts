import { NoAnswer } from "../metrology/no-answer";
import { say, sayNumber } from "../metrology/say";
import { asked } from "../trip/asked";
import type { Characteristic } from "../trip/characteristic";
import { largestRating } from "../trip/iec60898-tables";
import type { RatingList } from "../trip/standard-rating";
import { type Margin, type Start, startMargin } from "./margin";

/** A rating that was tried, and what it leaves of the start. */
export interface TriedRating {
  readonly rating: number;
  readonly margin: Margin;
}

/**
 * The ratings of a list from the smallest up to the first that rides through the start, which is the last one here.
 * Throws NoAnswer for a characteristic whose magnetic band hangs on a marked setting, and where no rating rides through.
 */
export const ratingsTried = (
  characteristic: Characteristic,
  start: Start,
  list: RatingList,
): readonly [...TriedRating[], TriedRating] => {
  if (characteristic.takesSetting)
    throw new NoAnswer(
      `characteristic: the magnetic band of "${characteristic.name}" hangs on a marked setting, so no rating is sure to ride through; ask INRUSH.MARGIN for one rating with its setting.`,
    );
  const tried: TriedRating[] = [];
  // The characteristics with a printed magnetic band are those of IEC 60898-1.
  for (const rating of list.ratings.filter((one) => one <= largestRating)) {
    const last = { rating, margin: startMargin(asked(rating, characteristic, {}), start) };
    if (last.margin.verdict === "rides through") return [...tried, last];
    tried.push(last);
  }
  const last = tried.at(-1) as TriedRating;
  throw new NoAnswer(
    `start current: no rating of ${list.name} up to ${largestRating} A with "${characteristic.name}" is sure to ride through ${say(start.current, "A")} for ${say(start.seconds, "s")}; at ${say(last.rating, "A")} ${weakest(last.margin)}.`,
  );
};

/** The margin that falls shortest, in words. */
export const weakest = (margin: Margin): string => {
  const parts = (["running", "thermal", "magnetic", "peak"] as const).map((name) => ({
    name,
    value: margin[name] ?? Infinity,
  }));
  const least = parts.reduce((one, other) => (other.value < one.value ? other : one));
  return `its ${least.name} margin is ${sayNumber(least.value)}`;
};
