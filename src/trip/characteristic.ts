import type { Source } from "../metrology/source";

/** A current that a sound breaker must carry from cold, all poles loaded, for at least `seconds` without tripping. */
export interface HoldPoint {
  readonly multiple: number;
  readonly seconds: number;
  readonly test: string;
  readonly source: Source;
}

/** A current at which a sound breaker must have tripped within `seconds`. */
export interface TripPoint {
  readonly multiple: number;
  readonly seconds: number;
  /** Straight after carrying this multiple from cold for the same `seconds`; left out, the test starts cold. */
  readonly after?: number;
  readonly test: string;
  readonly source: Source;
}

/** A class of ratings in words, after the one below it: "up to 32 A", "above 32 A up to 63 A". */
export const classInWords = (to: number, below?: { readonly to: number }): string =>
  below === undefined ? `up to ${to} A` : `above ${below.to} A up to ${to} A`;

/** What a document asks of the thermal release of one class of ratings, as multiples of the rating. */
export interface RatedClass {
  /** The class in words: "up to 32 A". */
  readonly name: string;
  /** The pickup is at least this multiple. */
  readonly holdMultiple: number;
  /** How long the hold test lasts; left out, "until temperatures are stable". */
  readonly holdSeconds?: number;
  readonly holdTest: string;
  readonly holdSource: Source;
  /** One more time that the breaker must not undercut, above the hold multiple. */
  readonly hold?: HoldPoint;
  readonly trips: readonly TripPoint[];
  /** Up to this multiple no trip within `seconds` from cold: bounds the magnetic release, not the strip. */
  readonly floor?: HoldPoint;
}

/** The magnetic release, A: takes no part up to `lower`, must trip from `upper` on. */
export interface MagneticBand {
  readonly lower: number;
  readonly upper: number;
  /** Time printed for a trip at `upper` and above; left out where the document prints none. */
  readonly seconds?: number;
  readonly test: string;
  readonly source: Source;
}

/** A kind of breaker: what its document lets a sound one do. */
export interface Characteristic {
  readonly name: string;
  /** °C at which the printed trip times hold. */
  readonly calibration: number;
  /** °C up to which the hold multiple holds unscaled, where the document states it at another temperature than the trip times. */
  readonly holdCalibration?: number;
  /** Throws NoAnswer beyond the document's ratings. Gives the same object for every rating of a class. */
  readonly classOf: (rating: number) => RatedClass;
  /** undefined: not known without the marked setting. */
  readonly magnetic: (rating: number, setting: number | undefined) => MagneticBand | undefined;
  /** The marked setting is an argument of its magnetic band. */
  readonly takesSetting: boolean;
  /** Multiples of the magnetic band, in words, for lists. */
  readonly magneticInWords: string;
  /** Not before 10 s at 2 ×: common practice, no limit of the document. */
  readonly typical: boolean;
}
