import { rerated, usualTripRise } from "../trip/ambient";
import type { Characteristic } from "../trip/characteristic";

/** A breaker and what it carries, A. */
interface Loaded {
  readonly rating: number;
  readonly load: number;
  readonly characteristic: Characteristic;
}

/** °C: the strip itself trips at this, calibration plus its usual trip rise. */
export const tripTemperature = ({ calibration }: Characteristic): number => calibration + usualTripRise;

/** °C at which the rating stands unchanged: 30 °C of IEC 60898-1, up to 40 °C of UL 489. */
export const ratedAt = ({ calibration, holdCalibration }: Characteristic): number => holdCalibration ?? calibration;

/** The square-root law between the temperature of the rating and that of the trip. */
export const lawOf = (characteristic: Characteristic): { reference: number; tripRise: number } => {
  const reference = ratedAt(characteristic);
  return { reference, tripRise: tripTemperature(characteristic) - reference };
};

/** The rating moved to the air inside, A. A hold that its document states up to a temperature (UL 489: 40 °C) does not rise below it. */
export const reratedIn = (inside: number, { rating, characteristic }: Loaded): number => {
  const { reference, tripRise } = lawOf(characteristic);
  const ambient = characteristic.holdCalibration === undefined ? inside : Math.max(inside, reference);
  return rerated(rating, { ambient, reference, tripRise });
};

/** °C of the air inside at which the re-rated current falls to the load; −Infinity for a load that no air lets pass. */
export const fallsBelowLoad = ({ rating, load, characteristic }: Loaded): number => {
  const { reference, tripRise } = lawOf(characteristic);
  if (characteristic.holdCalibration !== undefined && load > rating) return -Infinity;
  return reference + tripRise * (1 - (load / rating) ** 2);
};
