import fc from "fast-check";
import { type Comparison, compare } from "./compare";
import { cents, number, positive, whole, word } from "./given";

/** Functions of one or two numbers. */
export const arithmetic: readonly Comparison[] = [
  ...compare(
    "ABS SIGN INT SIN COS TAN ATAN DEGREES RADIANS EVEN ODD",
    fc.tuple(fc.oneof(number, word, fc.constant(null))),
  ),
  ...compare("SQRT", fc.tuple(number)),
  ...compare("LN LOG10", fc.tuple(positive)),
  ...compare("EXP SINH COSH TANH", fc.tuple(whole(-900, 900).map((n) => n / 30))),
  ...compare("ASIN ACOS", fc.tuple(whole(-12, 12).map((n) => n / 10))),
  ...compare("FACT", fc.tuple(whole(0, 20))),
  ...compare("ROUND ROUNDUP ROUNDDOWN TRUNC", fc.tuple(cents, whole(-3, 4))),
  // The library's MOD of negative numbers goes wrong.
  ...compare("MOD", fc.tuple(whole(0, 999), whole(1, 60))),
  ...compare("QUOTIENT", fc.tuple(whole(-999, 999), whole(1, 60))),
  ...compare("CEILING FLOOR CEILING.MATH FLOOR.MATH", fc.tuple(whole(1, 999), whole(1, 40)), {}),
  ...compare(
    "POWER",
    fc
      .tuple(
        positive.map((n) => n % 100),
        whole(-4, 4),
      )
      .filter(([base]) => base > 0),
  ),
  ...compare("LOG", fc.tuple(positive, whole(2, 12))),
  ...compare("COMBIN", fc.tuple(whole(6, 20), whole(0, 6))),
];
