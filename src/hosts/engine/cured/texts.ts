import { NumberValueObject, StringValueObject } from "@univerjs/engine-formula";
import { eachCell } from "./cells";
import { type FunctionClass, type Value, withArguments } from "./engine-function";

/** A number within a text has 15 digits in a spreadsheet; the engine writes out all that the double has. */
export const joinsValues = (name: string): FunctionClass =>
  withArguments(name, (values) => values.map((value) => eachCell(value, asText)));

/** TEXTJOIN's second argument is a choice and no text. */
export const TextJoin = withArguments("TEXTJOIN", (values) =>
  values.map((value, place) => (place === 1 ? value : eachCell(value, asText))),
);

/** A value as it stands within a text. */
const asText = (value: Value): Value => {
  if (value.isBoolean()) return StringValueObject.create(value.getValue() ? "TRUE" : "FALSE");
  if (!value.isNumber()) return value;
  return StringValueObject.create(String(Number(Number(value.getValue()).toPrecision(15))).toUpperCase());
};

export const Proper = withArguments("PROPER", ([text, ...rest]) => [
  ...(text ? [eachCell(text, (cell) => (cell.isNull() ? StringValueObject.create("") : asText(cell)))] : []),
  ...rest,
]);

/**
 * A number for one that a format rounds: the decimal number of 15 digits, a hair away from zero, so that 1.005 becomes 1.01 as
 * its digits say, though its double lies below. Whole numbers need none of it.
 */
const asShown = (value: Value): Value => {
  const number = Number(value.getValue());
  if (!value.isNumber() || Number.isInteger(number)) return value;
  return NumberValueObject.create(Number(number.toPrecision(15)) * (1 + 2 * Number.EPSILON));
};

/** TEXT leaves TRUE a text; the engine gives it back as it came. */
export const Text = withArguments("TEXT", ([value, ...rest]) => [
  ...(value ? [eachCell(value, (cell) => (cell.isBoolean() ? asText(cell) : asShown(cell)))] : []),
  ...rest,
]);

export const Fixed = withArguments("FIXED", ([value, ...rest]) => [
  ...(value ? [eachCell(value, asShown)] : []),
  ...rest,
]);
