import fc from "fast-check";
import type { Cell } from "../../../../src/definition/cells";
import { type Comparison, compare, type Given, inLibrary } from "./compare";
import { anything, cents, column, day, days, flat, grid, plain, rising, small, whole, word } from "./given";

/** Functions that look up, and those of dates. */
export const lookups: readonly Comparison[] = [
  ...compare("INDEX", fc.tuple(grid(anything, 3, 3), whole(1, 4), whole(1, 4))),
  ...compare("MATCH", fc.tuple(plain, column(plain, 2), fc.constant(0)), {
    asked: ((wanted: Cell, range: Given) =>
      inLibrary("MATCH")(wanted as never, flat(range) as never, 0 as never)) as never,
  }),
  ...compare("MATCH", fc.tuple(cents, rising, fc.constant(1)), {
    asked: ((wanted: Cell, range: Given) =>
      inLibrary("MATCH")(wanted as never, flat(range) as never, 1 as never)) as never,
  }),
  ...compare("VLOOKUP", fc.tuple(fc.oneof(word, small), grid(plain, 4, 3), whole(1, 3), fc.constant(false))),
  ...compare("HLOOKUP", fc.tuple(fc.oneof(word, small), grid(plain, 3, 4), whole(1, 3), fc.constant(false))),
  ...compare("LOOKUP", fc.tuple(cents, rising)),
  ...compare("HSTACK", fc.tuple(column(plain, 3, 3), column(plain, 3, 3))),

  ...compare("DATE", fc.tuple(whole(1910, 2100), whole(-5, 20), whole(-40, 60))),
  ...compare(
    "YEAR MONTH DAY WEEKDAY HOUR MINUTE SECOND ISOWEEKNUM",
    fc.tuple(
      fc.oneof(
        day,
        day.map((n) => n + 0.37),
      ),
    ),
  ),
  ...compare("WEEKNUM", fc.tuple(day)),
  ...compare("EDATE EOMONTH", fc.tuple(day, whole(-30, 30))),
  ...compare("DAYS", fc.tuple(day, day)),
  // Backwards the library counts as it pleases.
  ...compare("NETWORKDAYS", days),
  ...compare("TIME", fc.tuple(whole(0, 22), whole(0, 59), whole(0, 59))),
];
