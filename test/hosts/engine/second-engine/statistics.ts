import fc from "fast-check";
import { type Comparison, compare, type Given, inLibrary } from "./compare";
import {
  anything,
  bound,
  cents,
  column,
  columns,
  flat,
  grid,
  number,
  numberColumn,
  positive,
  rising,
  share,
  small,
  smallWord,
  whole,
} from "./given";

/** Functions of columns of numbers, and of those that meet a condition. */
export const statistics: readonly Comparison[] = [
  ...compare("MIN MAX COUNT COUNTA COUNTBLANK AND OR", fc.tuple(column(anything))),
  // In these the library counts FALSE and blanks, or has no word for no numbers.
  ...compare(
    "SUM AVERAGE MEDIAN STDEV.S STDEV.P VAR.S VAR.P PRODUCT SUMSQ DEVSQ AVEDEV SKEW KURT",
    fc.tuple(numberColumn),
  ),
  ...compare("GEOMEAN HARMEAN", fc.tuple(column(positive, 2))),
  ...compare(
    "PERCENTILE.INC",
    fc.tuple(
      numberColumn,
      whole(0, 20).map((n) => n / 20),
    ),
  ),
  ...compare("PERCENTILE.EXC", fc.tuple(numberColumn, share(4))),
  ...compare("QUARTILE.INC QUARTILE.EXC", fc.tuple(numberColumn, whole(1, 3))),
  ...compare("LARGE SMALL", fc.tuple(numberColumn, whole(1, 4))),
  ...compare(
    "RANK.EQ RANK.AVG",
    column(small, 3).chain((list) => fc.tuple(fc.constantFrom(...list.flat()), fc.constant(list), whole(0, 1))),
  ),
  ...compare(
    "SLOPE INTERCEPT CORREL RSQ STEYX PEARSON COVARIANCE.P COVARIANCE.S",
    fc.tuple(column(cents, 5, 5), column(small, 5, 5)).filter(([, xs]) => new Set(xs.flat()).size > 2),
    {
      tolerance: 1e-7,
    },
  ),
  ...compare("SUMXMY2 SUMX2MY2 SUMX2PY2", columns(cents, 2)),
  ...compare(
    "FORECAST FORECAST.LINEAR",
    fc.tuple(
      number,
      column(cents, 4, 4),
      rising.filter((xs) => xs.length === 4),
    ),
    {
      tolerance: 1e-7,
      asked: inLibrary("FORECAST"),
    },
  ),
  ...compare(
    "LINEST",
    fc.tuple(
      column(cents, 4, 4),
      rising.filter((xs) => xs.length === 4),
    ),
    {
      tolerance: 1e-7,
      asked: ((ys: Given, xs: Given) => inLibrary("LINEST")(flat(ys) as never, flat(xs) as never)) as never,
    },
  ),
  ...compare(
    "TREND",
    fc.tuple(
      column(cents, 4, 4),
      rising.filter((xs) => xs.length === 4),
      column(small, 2, 2),
    ),
    {
      tolerance: 1e-7,
      asked: ((ys: Given, xs: Given, at: Given) =>
        (inLibrary("TREND")(flat(ys) as never, flat(xs) as never, flat(at) as never) as number[]).map((value) => [
          value,
        ])) as never,
    },
  ),
  ...compare("MMULT", fc.tuple(grid(cents, 2, 3), grid(cents, 3, 2))),
  ...compare("FREQUENCY", fc.tuple(numberColumn, rising), {
    asked: ((range: Given, bins: Given) =>
      (inLibrary("FREQUENCY")(range as never, bins as never) as number[]).map((value) => [value])) as never,
  }),

  ...compare("COUNTIF", fc.oneof(fc.tuple(column(small), bound), fc.tuple(column(smallWord), smallWord))),
  ...compare(
    "SUMIF",
    columns(small, 2).chain(([seen, added]) =>
      fc.tuple(fc.constant(seen as Given), bound, fc.constant(added as Given)),
    ),
  ),
  ...compare(
    "COUNTIFS",
    columns(small, 2).chain(([a, b]) => fc.tuple(fc.constant(a as Given), bound, fc.constant(b as Given), bound)),
  ),
  ...compare(
    "SUMIFS",
    columns(small, 3).chain(([sum, a, b]) =>
      fc.tuple(fc.constant(sum as Given), fc.constant(a as Given), bound, fc.constant(b as Given), bound),
    ),
  ),
  ...compare("SUMPRODUCT", columns(cents, 2)),
];
