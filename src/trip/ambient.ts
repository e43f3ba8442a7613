import { NoAnswer } from "../metrology/no-answer";
import { loneValues, type Source } from "../metrology/source";

// The strip trips at one temperature of its own. Warmer air leaves less rise to go, so the pickup moves with the square root
// of the rise that is left: I(T) = I(T_cal) · √((T_trip − T)/(T_trip − T_cal)). Common practice; an instance is printed for
// switchgear in IEEE C37.20.1. It moves the bimetal's edge and is never a permitted load. Magnetic trips do not move.

/** Rise of the strip at its trip above the calibration temperature, K, where nothing better is known (typical 55 to 100 K). */
export const usualTripRise = 80;

export const ambientLaw: Source = {
  document: "square-root law of the air temperature",
  standing: "common practice, no source",
  tables: [
    {
      title: "Trip rise where none is given",
      columns: loneValues,
      rows: [["strip at its trip above the calibration temperature", usualTripRise, "K"]],
      guard: "test/trip/published.test.ts",
    },
  ],
};

interface Air {
  /** °C around the breaker. */
  readonly ambient: number;
  /** °C at which the breaker is calibrated. */
  readonly reference: number;
  /** K of the strip at its trip above the reference. */
  readonly tripRise: number;
}

/** By how much the pickup moves from the reference temperature to the air temperature; 1 at the reference. */
export const pickupFactor = ({ ambient, reference, tripRise }: Air): number => {
  const left = reference + tripRise - ambient;
  if (left <= 0)
    throw new NoAnswer(
      `ambient: at ${ambient} °C the air alone is as hot as the strip at its trip (${reference} °C + ${tripRise} K), so nothing can be carried.`,
    );
  return Math.sqrt(left / tripRise);
};

/** The current, A, at which the bimetal of a breaker of this rating has its rated edge in that air. */
export const rerated = (rating: number, air: Air): number => rating * pickupFactor(air);
