import fc from "fast-check";
import type { Cell } from "../../../../src/definition/cells";
import type { Given } from "./compare";

// What the functions are given.

export const whole = (min: number, max: number) => fc.integer({ min, max });
export const small = whole(-9, 9);
export const cents = whole(-99_999, 99_999).map((n) => n / 100);
export const number = fc.oneof(
  small,
  cents,
  whole(-9999, 9999).map((n) => n * 1e-6),
  whole(-9999, 9999).map((n) => n * 1e5),
);
export const positive = number.map(Math.abs).filter((n) => n > 0);
export const share = (parts: number) => whole(1, parts - 1).map((n) => n / parts);
/** None of these looks like a number: a text that does is no number in a range, which the library forgets. */
export const word = fc.constantFrom("holds", "Trips", "X", "x", "b-c", "cold soak", "Fernhollow", "20 A", "é");
/** The library tells "X" from "x" where conditions must not. */
export const smallWord = fc.constantFrom("holds", "trips", "cold soak");
export const anything: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 4, arbitrary: number },
  word,
  fc.boolean(),
  fc.constant(null),
);
export const plain: fc.Arbitrary<Cell> = fc.oneof(number, word);

export const column = <T>(values: fc.Arbitrary<T>, least = 1, most = 6) =>
  fc.array(values, { minLength: least, maxLength: most }).map((list) => list.map((value) => [value]));
export const grid = <T>(values: fc.Arbitrary<T>, rows: number, columns: number) =>
  fc.array(fc.array(values, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows });
/** Columns of one length. */
export const columns = <T>(values: fc.Arbitrary<T>, many: number, least = 1) =>
  whole(least, 6).chain((rows) => fc.tuple(...Array.from({ length: many }, () => column(values, rows, rows))));
/** Numbers that rise, and so differ. */
export const rising = fc
  .uniqueArray(small, { minLength: 3, maxLength: 6 })
  .map((list) => list.sort((a, b) => a - b).map((value) => [value]));
export const numberColumn = column(number, 4);
export const flat = (range: Given): Cell[] => (range as Cell[][]).flat();
export const bound = fc.tuple(fc.constantFrom(">", ">=", "<", "<=", "<>", "="), small).map((parts) => parts.join(""));
export const day = whole(1000, 60_000);
export const days = fc.tuple(day, day).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]);
