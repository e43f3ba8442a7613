import { BadInput } from "../../definition/bad-input";

// Some hosts hand a blank cell over as 0, and 0 °C is a temperature.

/** Where a verdict hangs on it, 0 °C is refused: a missing value never becomes a verdict. */
export const refuseZero = (name: string, celsius: number | undefined): void => {
  if (celsius === 0)
    throw new BadInput(
      `${name}: 0 °C is also what a blank cell counts as; type the ${name}'s temperature, 0.1 for freezing.`,
    );
};

/** Elsewhere it is said. */
export const zeroCaution = (what: string, celsius: number | undefined): readonly string[] =>
  celsius === 0 ? [`The ${what} is taken at 0 °C; some sheets hand a blank cell over as 0.`] : [];
