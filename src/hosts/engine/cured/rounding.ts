import { ErrorType, ErrorValueObject, NumberValueObject } from "@univerjs/engine-formula";
import { asNumber, spread } from "./cells";
import { engineFunction, type FunctionClass, type Result, type Value } from "./engine-function";

/** A spreadsheet's numbers have so many digits. */
const DIGITS = 15;

/**
 * Rounds the decimal number that a spreadsheet shows, halves away from zero: 1.005 to 1.01, though its double lies below. The engine
 * adds or takes a unit in the last place where it multiplies: TRUNC(-7,3) is -6.999 there, ROUNDDOWN(2,20) 2.0000000000000004.
 */
const rounded = (value: number, places: number, whole: (magnitude: number) => number): number => {
  const [mantissa = "0", exponent = "0"] = Math.abs(value)
    .toExponential(DIGITS - 1)
    .split("e");
  const digit = Number(exponent) + places;
  if (value === 0 || digit >= DIGITS) return value;
  const units = whole(Number(`${mantissa}e${digit}`));
  return Math.sign(value) * Number(`${units}e${-places}`);
};

export const toNearest = (magnitude: number): number => Math.floor(magnitude + 0.5);

/** ROUND, ROUNDUP, ROUNDDOWN and TRUNC. */
export const rounding = (name: string, whole: (magnitude: number) => number): FunctionClass =>
  class extends engineFunction(name) {
    override calculate(number: Value, places: Value = NumberValueObject.create(0)): Result {
      return spread([number, places], (...cells) => {
        const [value, to] = cells.map(asNumber) as [Value, Value];
        if (value.isError()) return value;
        if (to.isError()) return to;
        const answer = rounded(Number(value.getValue()), Math.trunc(Number(to.getValue())), whole);
        return Number.isFinite(answer) ? NumberValueObject.create(answer) : ErrorValueObject.create(ErrorType.NUM);
      });
    }
  };
