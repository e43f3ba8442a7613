import fc from "fast-check";
import { type Comparison, compare } from "./compare";
import { anything, cents, column, number, plain, whole, word } from "./given";

/** Functions of texts, and those that choose between values. */
export const texts: readonly Comparison[] = [
  ...compare("ISNUMBER ISTEXT ISNONTEXT ISLOGICAL ISBLANK ISERROR ISNA N", fc.tuple(anything)),
  ...compare("IF", fc.tuple(fc.oneof(fc.boolean(), number), plain, plain)),
  ...compare("IFERROR IFNA", fc.tuple(plain, plain)),
  ...compare("IFS", fc.tuple(fc.boolean(), plain, fc.constant(true), plain)),
  ...compare("SWITCH", fc.tuple(whole(1, 3), fc.constant(1), plain, fc.constant(2), plain, plain)),
  ...compare("CHOOSE", fc.tuple(whole(1, 2), plain, plain)),
  ...compare("EXACT", fc.tuple(word, word)),

  ...compare("LEN UPPER LOWER TRIM", fc.tuple(word.map((text) => ` ${text}  ${text}`))),
  // The library writes "2nd" and "B-c", where Microsoft's page has "76Budget" and "2-Way Street".
  ...compare("PROPER", fc.tuple(fc.constantFrom("cold soak", "BENCH log", "a rest"))),
  ...compare("LEFT RIGHT", fc.tuple(word, whole(0, 6))),
  ...compare("MID", fc.tuple(word, whole(1, 4), whole(1, 5))),
  ...compare("REPT", fc.tuple(word, whole(0, 4))),
  ...compare("FIND SEARCH", fc.tuple(fc.constantFrom("o", "s", "X", "old", "-"), word)),
  ...compare("SUBSTITUTE", fc.tuple(word, fc.constantFrom("o", "s", "l"), word)),
  ...compare("REPLACE", fc.tuple(word, whole(1, 4), whole(0, 3), word)),
  // Of a number within a text the library writes more than 15 digits.
  ...compare("CONCATENATE", fc.tuple(fc.oneof(cents, word), fc.oneof(cents, word))),
  ...compare("CONCAT", fc.tuple(column(fc.oneof(cents, word)))),
  ...compare("TEXTJOIN", fc.tuple(fc.constantFrom("-", ", "), fc.constant(true), column(word))),
  // The library's VALUE of words is 0.
  ...compare("VALUE", fc.tuple(number.map(String))),
  ...compare("CODE", fc.tuple(word)),
  ...compare(
    "TEXT",
    fc.tuple(
      cents.filter((n) => Math.abs(n) >= 1),
      fc.constantFrom("0", "0.0", "0.00", "#,##0", "#,##0.00", "0%", "0.0%"),
    ),
  ),
];
