import { ErrorType, ErrorValueObject, NumberValueObject, StringValueObject } from "@univerjs/engine-formula";
import { asNumber, eachCell, rowsOf } from "./cells";
import { type FunctionClass, type Value, withAnswer, withArguments } from "./engine-function";

const withTextsOfCells = (name: string, turn: (text: Value) => Value): FunctionClass =>
  withArguments(name, (values) =>
    values.map((value) => (value.isArray() ? eachCell(value, (cell) => (cell.isString() ? turn(cell) : cell)) : value)),
  );

/** Texts in cells are no numbers for statistics, though "42" looks like one; the engine counts it in these. */
export const passesOverTexts = (name: string): FunctionClass => withTextsOfCells(name, () => noNumber);

const noNumber = StringValueObject.create("no number");

/** A text in a cell that looks like a number is one in arithmetic: ABS of "42" is 42. The engine says #VALUE!. */
export const readsTexts = (name: string): FunctionClass => withTextsOfCells(name, asNumber);

/** The scatter of no numbers at all is #DIV/0!; the engine says 0. */
export const scatter = (name: string): FunctionClass =>
  withAnswer(name, (answer, values) =>
    answer.isNumber() && !values.some(holdsNumber) ? ErrorValueObject.create(ErrorType.DIV_BY_ZERO) : answer,
  );

const holdsNumber = (value: Value): boolean =>
  value.isArray() ? rowsOf(value).some((row) => row.some((cell) => cell.isNumber())) : !value.isNull();

/** The largest of what meets the conditions is 0 when nothing does; the engine says "". */
export const extremeIf = (name: string): FunctionClass =>
  withAnswer(name, (answer) =>
    eachCell(answer, (cell) =>
      cell.isError() || (cell.isNumber() && Number.isFinite(cell.getValue())) ? cell : NumberValueObject.create(0),
    ),
  );

/** A blank cell is no 0 among others; the engine counts it as one. It is given the value of a cell that holds something. */
export const extremeOfAll = (name: string): FunctionClass =>
  withArguments(name, (values) => {
    const filled = values.flatMap((value) => rowsOf(value).flat()).find((cell) => !cell.isNull());
    return filled ? values.map((value) => eachCell(value, (cell) => (cell.isNull() ? filled : cell))) : values;
  });
