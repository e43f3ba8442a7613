import { NoAnswer } from "../metrology/no-answer";
import type { Characteristic } from "./characteristic";
import { type Bench, benchOf, type Conditions } from "./conditions";
import { type OwnBand, ownBandRange } from "./own-band";
import { type TripRange, tripRange } from "./range";

/** A breaker with its conditions as a question asks about it: by a document's characteristic, or by a band of the tester's own. */
export interface Asked {
  readonly rating: number;
  readonly conditions: Conditions;
  /** undefined for an own band. */
  readonly bench?: Bench;
  readonly characteristic?: Characteristic;
  /** The currents, A, between which an own band answers. */
  readonly span?: { readonly from: number; readonly to: number };
  readonly rangeAt: (current: number) => TripRange;
}

/** Throws NoAnswer as benchOf does, and for conditions beside an own band, which says nothing of how it moves with them. */
export const asked = (rating: number, kind: Characteristic | OwnBand, conditions: Conditions): Asked => {
  if (!("rows" in kind)) {
    const bench = benchOf({ rating, characteristic: kind }, conditions);
    return { rating, conditions, bench, characteristic: kind, rangeAt: (current) => tripRange(bench, current) };
  }
  const given = (["preload", "ambient", "setting", "tripRise"] as const).find(
    (condition) => (conditions[condition] ?? 0) !== 0,
  );
  if (given)
    throw new NoAnswer(
      `${given}: an own band holds for the conditions it was taken in; leave ${given} out, or ask by a characteristic.`,
    );
  const span = { from: (kind.rows[0]?.multiple ?? 0) * rating, to: (kind.rows.at(-1)?.multiple ?? 0) * rating };
  return { rating, conditions, span, rangeAt: (current) => ownBandRange(kind, current / rating) };
};
