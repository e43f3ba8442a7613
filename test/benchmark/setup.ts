import { envelopeOf } from "../../src/trip/envelope";
import { knownCharacteristics } from "../../src/trip/known";
import { type Comparison, measure } from "./compare";

/** Solving every characteristic in every class of ratings from nothing. */
export const setup = (): Comparison[] => [
  measure(
    "set-up of all characteristics, every class of ratings",
    () =>
      knownCharacteristics.flatMap(({ classOf }) =>
        [...new Set([20, 50, 80, 120].map((rating) => classOf(rating)))].map(envelopeOf),
      ),
    "≤ 50 ms",
  ),
];
