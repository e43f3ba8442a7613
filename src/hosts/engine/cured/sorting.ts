import { ErrorType, ErrorValueObject } from "@univerjs/engine-formula";
import { arrayOf, firstOf, isYes, listOf, rowsOf } from "./cells";
import { engineFunction, type Result, type Value } from "./engine-function";

const fault = () => ErrorValueObject.create(ErrorType.VALUE);

/** Numbers before texts before FALSE and TRUE before errors. */
const kindOf = (value: Value): number => (value.isError() ? 3 : value.isBoolean() ? 2 : value.isString() ? 1 : 0);
const collator = new Intl.Collator("en", { sensitivity: "accent" });

const compared = (a: Value, b: Value): number => {
  const kinds = kindOf(a) - kindOf(b);
  if (kinds !== 0 || a.isError()) return kinds;
  if (a.isString()) return collator.compare(String(a.getValue()), String(b.getValue()));
  return Number(a.getValue()) - Number(b.getValue());
};

/** One column to sort by, and whether downwards. */
interface Key {
  readonly column: readonly Value[];
  readonly order: 1 | -1;
}

/** The rows in the order of their keys; blanks come last whichever way, and equals stay as they were. */
const sorted = (rows: readonly Value[][], keys: readonly Key[]): Value[][] => {
  const compare = (a: number, b: number): number => {
    for (const { column, order } of keys) {
      const [one, other] = [column[a] as Value, column[b] as Value];
      const blanks = Number(one.isNull()) - Number(other.isNull());
      const by = blanks || (one.isNull() ? 0 : order * compared(one, other));
      if (by !== 0) return by;
    }
    return a - b;
  };
  return [...rows.keys()].sort(compare).map((place) => rows[place] as Value[]);
};

const turned = (rows: readonly Value[][]): Value[][] =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] as Value));

const orderOf = (value: Value | undefined): 1 | -1 | undefined => {
  const order = value === undefined || value.isNull() ? 1 : Number(value.getValue());
  return order === 1 || order === -1 ? order : undefined;
};

const keyFrom = (column: readonly Value[] | undefined, order: 1 | -1 | undefined): Key | undefined =>
  column && order && { column, order };
const isComplete = (keys: readonly (Key | undefined)[]): keys is readonly Key[] => !keys.includes(undefined);

/** SORT keeps text and numbers apart and leaves its cells alone; the engine turns over the very cells that other formulas read. */
export class Sort extends engineFunction("SORT") {
  override calculate(array: Value, by?: Value, orders?: Value, acrossColumns?: Value): Result {
    if (array.isError()) return array;
    const rows = isYes(acrossColumns) ? turned(rowsOf(array)) : rowsOf(array);
    const columns = turned(rows);
    const places = listOf(by).map((value) => Math.trunc(Number(value.getValue())));
    const given = listOf(orders).map(orderOf);
    const keys = (places.length > 0 ? places : [1]).map((place, key) =>
      keyFrom(columns[place - 1], given.length > 1 ? given[key] : given.length === 1 ? given[0] : 1),
    );
    if (!isComplete(keys)) return fault();
    const answer = sorted(rows, keys);
    return arrayOf(isYes(acrossColumns) ? turned(answer) : answer);
  }
}

export class SortBy extends engineFunction("SORTBY") {
  override calculate(array: Value, ...by: Value[]): Result {
    const broken = [array, ...by].find((value) => value.isError());
    if (broken) return broken;
    const rows = rowsOf(array);
    const keyed = by.filter((_, place) => place % 2 === 0).map(rowsOf);
    // A row of keys sorts columns.
    const isTurned = (keyed[0]?.[0]?.length ?? 1) > 1;
    const lines = isTurned ? turned(rows) : rows;
    const keys = keyed.map((key, place) => {
      const column = key.flat();
      const fits = column.length === lines.length && (isTurned ? key.length : key[0]?.length) === 1;
      const order = by[2 * place + 1];
      return keyFrom(fits ? column : undefined, orderOf(order && firstOf(order)));
    });
    if (!isComplete(keys)) return fault();
    const answer = sorted(lines, keys);
    return arrayOf(isTurned ? turned(answer) : answer);
  }
}

/** UNIQUE takes "x" and "X" for one, "42" and 42 for two; the engine the other way about. */
export class Unique extends engineFunction("UNIQUE") {
  override calculate(array: Value, acrossColumns?: Value, once?: Value): Result {
    if (array.isError()) return array;
    const rows = isYes(acrossColumns) ? turned(rowsOf(array)) : rowsOf(array);
    const found = new Map<string, Value[][]>();
    for (const row of rows) {
      const key = row.map(keyOf).join("\n");
      found.set(key, [...(found.get(key) ?? []), row]);
    }
    const answer = [...found.values()].flatMap((same) => (isYes(once) && same.length > 1 ? [] : same.slice(0, 1)));
    if (answer.length === 0) return ErrorValueObject.create(ErrorType.CALC);
    return arrayOf(isYes(acrossColumns) ? turned(answer) : answer);
  }
}

const keyOf = (value: Value): string =>
  value.isNull() ? "" : `${kindOf(value)} ${String(value.getValue()).toLowerCase()}`;
