import { sayNumber } from "../metrology/say";
import { secondsToCool } from "../thermal/body";

/** A strip counts as cold below this share of its trip state: 4.6 time constants after a trip. */
export const cold = 0.01;

/** s from a thermal trip until the strip is cold. */
export const restSeconds = (timeConstant: number): number => secondsToCool(timeConstant, { from: 1, to: cold });

/** A long time as it is said on a bench: "21.1 min", "6.85 h". */
export const sayLong = (seconds: number): string =>
  seconds < 7200 ? `${sayNumber(seconds / 60, 3)} min` : `${sayNumber(seconds / 3600, 3)} h`;

/** The housing cools more slowly than the strip, so the clock alone does not say that a breaker is cold. */
export const fromCold = (rest: number): string =>
  `From cold: rest ${sayLong(rest)} and until the terminals are back at room temperature.`;
