import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import { pickupFactor, usualTripRise } from "./ambient";
import type { Characteristic, MagneticBand, RatedClass } from "./characteristic";
import { type Envelope, envelopeOf } from "./envelope";

/** A breaker as a question names it. */
interface Breaker {
  /** A; of an adjustable thermal release its setting Ir. */
  readonly rating: number;
  readonly characteristic: Characteristic;
}

/** What surrounds a test; all may be left out. */
export interface Conditions {
  /** A, carried steadily for long before; left out or 0: cold. */
  readonly preload?: number;
  /** °C; left out: every printed point at its own temperature. */
  readonly ambient?: number;
  /** A, the marked setting of the magnetic release. */
  readonly setting?: number;
  /** K of the strip at its trip above the calibration temperature. */
  readonly tripRise?: number;
}

/** A breaker in its conditions, ready to be asked about any current. */
export interface Bench {
  readonly rating: number;
  readonly ratedClass: RatedClass;
  readonly magnetic: MagneticBand | undefined;
  readonly envelope: Envelope;
  /** Pickup here ÷ pickup at the calibration temperature. */
  readonly factor: number;
  /** A: a sound breaker need not trip up to here in this air (hold multiple × rating, moved with the air). */
  readonly holdEdge: number;
  /** A: from here on it must trip in the end. */
  readonly tripEdge: number;
  /** State the test starts from, as a square of a multiple at calibration temperature. */
  readonly start: number;
  readonly startMultiple: number;
}

/** Two multiples that count as one: 22.6 ÷ 20 is 1.1300000000000001 in doubles. */
export const sameMultiple = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * b;

/** Throws NoAnswer for a rating outside the document, a preload that a sound breaker need not carry, or a setting at or below the rating. */
export const benchOf = (
  { rating, characteristic }: Breaker,
  { preload = 0, ambient, setting, tripRise = usualTripRise }: Conditions,
): Bench => {
  const ratedClass = characteristic.classOf(rating);
  if (setting !== undefined && setting <= rating)
    throw new NoAnswer(
      `setting: a magnetic release set to ${sayNumber(setting)} A would trip at or below the rating of ${sayNumber(rating)} A; the marked setting in amperes is wanted.`,
    );
  const reference = characteristic.calibration;
  const factor = ambient === undefined ? 1 : pickupFactor({ ambient, reference, tripRise });
  const holdFactor = ambient === undefined ? 1 : holdFactorOf(characteristic, ambient, tripRise, factor);
  const holdEdge = ratedClass.holdMultiple * holdFactor * rating;
  if (preload > holdEdge && !sameMultiple(preload, holdEdge))
    throw new NoAnswer(
      `preload: ${sayNumber(preload)} A is above ${sayNumber(holdEdge)} A, the most that a sound breaker need carry for long here; it may have tripped before the test.`,
    );
  const startMultiple = preload / rating / factor;
  const lowestTrip = Math.min(...ratedClass.trips.map(({ multiple }) => multiple));
  return {
    rating,
    ratedClass,
    magnetic: characteristic.magnetic(rating, setting),
    envelope: envelopeFor(ratedClass, holdFactor / factor),
    factor,
    holdEdge,
    tripEdge: lowestTrip * factor * rating,
    start: startMultiple ** 2,
    startMultiple,
  };
};

/** A hold stated at a temperature of its own (UL 489: 40 °C) is promised unscaled up to it, and moves with the air above. */
const holdFactorOf = (
  { calibration, holdCalibration }: Characteristic,
  ambient: number,
  tripRise: number,
  factor: number,
): number => {
  if (holdCalibration === undefined) return factor;
  if (ambient <= holdCalibration) return 1;
  return factor / pickupFactor({ ambient: holdCalibration, reference: calibration, tripRise });
};

const envelopes = new WeakMap<RatedClass, Map<number, Envelope>>();

/** Solved once for each class, and for each position of the hold edge against the trip points. */
const envelopeFor = (ratedClass: RatedClass, shift: number): Envelope => {
  const known = envelopes.get(ratedClass) ?? new Map<number, Envelope>();
  if (known.size === 0) envelopes.set(ratedClass, known);
  let envelope = known.get(shift);
  if (!envelope) {
    // A long column of air temperatures makes one each; forget them before they pile up.
    if (known.size > 500) known.clear();
    envelope = envelopeOf({ ...ratedClass, holdMultiple: ratedClass.holdMultiple * shift });
    known.set(shift, envelope);
  }
  return envelope;
};
