import {
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { eachCell, spread } from "./cells";
import { engineFunction, type FunctionClass, type Result, type Value, withArguments } from "./engine-function";

/** A text is no condition, unless it says TRUE or FALSE; the engine takes every text that is not empty for TRUE. */
const asCondition = (value: Value): Value => {
  if (!value.isString()) return value;
  const word = String(value.getValue()).toUpperCase();
  if (word === "TRUE" || word === "FALSE") return BooleanValueObject.create(word === "TRUE");
  return ErrorValueObject.create(ErrorType.VALUE);
};

export const If = withArguments("IF", ([condition, ...rest]) => [
  eachCell(condition ?? NullValueObject.create(), asCondition),
  ...rest,
]);

/** AND, OR, XOR and NOT of a text that stands in the formula; those of cells pass over texts, or refuse them themselves. */
export const ofConditions = (name: string): FunctionClass =>
  withArguments(name, (values) => values.map((value) => (value.isArray() ? value : asCondition(value))));

/** A blank cell as an answer is 0. */
const asAnswer = (value: Value): Value => (value.isNull() ? NumberValueObject.create(0) : value);

/** IFS stops at the first condition that holds, whatever comes after; the engine gives the first error that stands anywhere. */
export class Ifs extends engineFunction("IFS") {
  override calculate(...values: Value[]): Result {
    if (values.length % 2 !== 0) return ErrorValueObject.create(ErrorType.NA);
    return spread(values, (...cells) => {
      for (let pair = 0; pair < cells.length; pair += 2) {
        const condition = asCondition(cells[pair] as Value);
        if (condition.isError()) return condition;
        if (Number(condition.getValue() ?? 0) !== 0) return asAnswer(cells[pair + 1] as Value);
      }
      return ErrorValueObject.create(ErrorType.NA);
    });
  }
}

/** SWITCH keeps text and numbers apart, and may answer with a blank cell; the engine takes "1" for 1, and a blank for nothing found. */
export class Switch extends engineFunction("SWITCH") {
  override calculate(...values: Value[]): Result {
    if (values.length < 3) return ErrorValueObject.create(ErrorType.NA);
    return spread(values, (wanted, ...cells) => {
      if (wanted?.isError()) return wanted;
      const pairs = cells.length - (cells.length % 2);
      for (let pair = 0; pair < pairs; pair += 2) {
        const known = cells[pair] as Value;
        if (known.isError()) return known;
        if (isSame(wanted as Value, known)) return asAnswer(cells[pair + 1] as Value);
      }
      return cells.length > pairs ? asAnswer(cells[pairs] as Value) : ErrorValueObject.create(ErrorType.NA);
    });
  }
}

/** Equal as `=` finds it: text in any case, a blank as 0, as empty text and as FALSE. */
const isSame = (a: Value, b: Value): boolean => {
  if (a.isNull() || b.isNull()) return [a, b].every((value) => value.isNull() || !value.getValue());
  const [one, other] = [a.getValue(), b.getValue()];
  return typeof one === "string" && typeof other === "string"
    ? one.toLowerCase() === other.toLowerCase()
    : one === other;
};
