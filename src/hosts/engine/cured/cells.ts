import {
  ArrayValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
} from "@univerjs/engine-formula";
import type { Value } from "./engine-function";

// The values that a function is given, cell by cell.

/**
 * A value, or each cell of an array, turned into another. Blank cells come as blank values. The engine's own `mapValue` gives
 * #VALUE! for the rows that it has left out because all they hold is the array's usual value.
 */
export const eachCell = (value: Value, turn: (cell: Value) => Value): Value =>
  value.isArray() ? arrayOf(rowsOf(value).map((row) => row.map(turn))) : turn(value);

const sizeOf = (value: Value): { rows: number; columns: number } => {
  if (!value.isArray()) return { rows: 1, columns: 1 };
  const array = value as ArrayValueObject;
  return { rows: array.getRowCount(), columns: array.getColumnCount() };
};

/** The answer to arguments of one value each, made for arrays: single rows, columns and values repeat, what is missing is #N/A. */
export const spread = (values: readonly Value[], answer: (...cells: Value[]) => Value): Value => {
  const sizes = values.map(sizeOf);
  const rows = Math.max(...sizes.map((size) => size.rows));
  const columns = Math.max(...sizes.map((size) => size.columns));
  const cellAt = (value: Value, place: number, row: number, column: number): Value => {
    if (!value.isArray()) return value;
    const { rows: high, columns: wide } = sizes[place] as (typeof sizes)[number];
    const [r, c] = [high === 1 ? 0 : row, wide === 1 ? 0 : column];
    if (r >= high || c >= wide) return ErrorValueObject.create(ErrorType.NA);
    return (value as ArrayValueObject).get(r, c) ?? NullValueObject.create();
  };
  const answerAt = (row: number, column: number) =>
    answer(...values.map((value, place) => cellAt(value, place, row, column)));
  if (rows === 1 && columns === 1) return answerAt(0, 0);
  return arrayOf(
    Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => answerAt(row, column))),
  );
};

/** Rows of values as the engine's array. */
export const arrayOf = (rows: Value[][]): Value =>
  ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: 0,
    column: 0,
  });

/** The rows of a value; one value is a row of one. */
export const rowsOf = (value: Value): Value[][] => {
  const { rows, columns } = sizeOf(value);
  if (!value.isArray()) return [[value]];
  const array = value as ArrayValueObject;
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => array.get(row, column) ?? NullValueObject.create()),
  );
};

/** The one value of an argument that means a number or a choice: of an array its first. */
export const firstOf = (value: Value): Value =>
  value.isArray() ? ((value as ArrayValueObject).getFirstCell() ?? NullValueObject.create()) : value;

/** A value in arithmetic: texts that look like numbers are numbers, other texts #VALUE!. */
export const asNumber = (value: Value): Value => {
  if (value.isError() || value.isNumber()) return value;
  return value.isString()
    ? value.convertToNumberObjectValue()
    : NumberValueObject.create(Number(value.getValue() ?? 0));
};

/** Whether an argument says TRUE, or a number other than 0; what is left out says no. */
export const isYes = (value: Value | undefined): boolean => value !== undefined && Boolean(firstOf(value).getValue());

/** An argument that lists values: its cells from left to right and down; nothing when it was left out. */
export const listOf = (value: Value | undefined): Value[] =>
  value === undefined || value.isNull() ? [] : rowsOf(value).flat();
