import { sayNumber } from "../../metrology/say";

/** In per cent; what is not certain is never said as certain. */
export const sayProbability = (probability: number): string =>
  probability > 0.9999
    ? "more than 99.99 %"
    : probability < 0.0001
      ? "less than 0.01 %"
      : `${sayNumber(100 * probability, 3)} %`;
