import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import { sameMultiple } from "./conditions";
import type { TripRange } from "./range";

/** One row of a tester's own band: between these times at this multiple a sound breaker trips. */
export interface BandRow {
  readonly multiple: number;
  /** s; 0: no minimum. */
  readonly shortest: number;
  /** s; Infinity: no limit. */
  readonly longest: number;
}

/** A band typed by the tester (a maker's sheet, an earlier study): at least two rows, multiples rising. */
export interface OwnBand {
  readonly rows: readonly BandRow[];
}

/** Log–log between the rows; a stretch that touches 0 or no limit takes the wider end. Throws NoAnswer outside the rows. */
export const ownBandRange = ({ rows }: OwnBand, multiple: number): TripRange => {
  const at = rows.findIndex((row) => multiple <= row.multiple || sameMultiple(multiple, row.multiple));
  const right = rows[at];
  const left = rows[Math.max(0, at - 1)];
  const outside = !right || !left || (at === 0 && !sameMultiple(multiple, right.multiple));
  if (outside)
    throw new NoAnswer(
      `current: the own band runs from ${sayNumber(rows[0]?.multiple ?? 0)} × to ${sayNumber(rows.at(-1)?.multiple ?? 0)} × the rating, and says nothing of ${sayNumber(multiple)} ×.`,
    );
  const share = left === right ? 1 : Math.log(multiple / left.multiple) / Math.log(right.multiple / left.multiple);
  const between = (from: number, to: number): number =>
    share >= 1 ? to : Math.exp(Math.log(from) + share * (Math.log(to) - Math.log(from)));
  const onRow = sameMultiple(multiple, right.multiple);
  const shortest = onRow
    ? right.shortest
    : Math.min(left.shortest, right.shortest) === 0
      ? 0
      : between(left.shortest, right.shortest);
  const longest = onRow
    ? right.longest
    : Math.max(left.longest, right.longest) === Infinity
      ? Infinity
      : between(left.longest, right.longest);
  return {
    multiple,
    scaled: multiple,
    shortest: { seconds: shortest, line: shortest === 0 ? "no minimum" : "own band" },
    longest: { seconds: longest, line: longest === Infinity ? "may hold" : "own band" },
    thermalOnly: false,
  };
};
