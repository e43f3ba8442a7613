import { exceeds } from "../metrology/exceeds";
import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import { standardRatings } from "../trip/nfpa70";
import { ceilingPercent, exceptionPercent, type MotorType } from "./nfpa70";

/** What the code lets protect a motor's branch circuit, A. */
interface Ceiling {
  /** The percentage of the full-load current. */
  readonly ceiling: number;
  /** The standard rating it may be rounded up to. */
  readonly nextSize: number;
  /** No rating above this even where the motor will not start otherwise. */
  readonly exception: number;
}

/** For an inverse-time breaker and the table's full-load current, A (not the nameplate's). Throws NoAnswer above the standard ratings. */
export const motorCeiling = (fullLoad: number, type: MotorType): Ceiling => {
  const ceiling = (ceilingPercent[type] / 100) * fullLoad;
  const nextSize = standardRatings.find((rating) => !exceeds(ceiling, rating));
  if (nextSize === undefined)
    throw new NoAnswer(
      `full load: ${ceilingPercent[type]} % of ${sayNumber(fullLoad)} A is ${sayNumber(ceiling)} A, above the largest standard rating, ${standardRatings.at(-1)} A.`,
    );
  return { ceiling, nextSize, exception: (exceptionPercent(fullLoad) / 100) * fullLoad };
};
