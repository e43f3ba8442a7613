import { AnchorArray, Single } from "../operators";
import { watched } from "./addresses";
import { Edate, Eomonth, IsoWeek, WeekNumber } from "./dates";
import type { FunctionClass } from "./engine-function";
import { If, Ifs, ofConditions, Switch } from "./logic";
import { blankSafe } from "./lookups";
import { rounding, toNearest } from "./rounding";
import { bounded } from "./sizes";
import { Sort, SortBy, Unique } from "./sorting";
import { extremeIf, extremeOfAll, passesOverTexts, readsTexts, scatter } from "./statistics";
import { Fixed, joinsValues, Proper, Text, TextJoin } from "./texts";

type Named = [FunctionClass, string];

const each = (names: string, cure: (name: string) => FunctionClass): Named[] =>
  names.split(" ").map((name) => [cure(name), name]);

/** Functions to be registered in place of the engine's own, beside ours. */
export const curedFunctions: readonly Named[] = [
  [Single, "SINGLE"],
  [AnchorArray, "ANCHORARRAY"],
  ...each("SEQUENCE RANDARRAY MAKEARRAY", (name) => bounded(name, 0)),
  ...each("INDIRECT OFFSET", watched),
  ...each("EXPAND", (name) => bounded(name, 1)),
  [Sort, "SORT"],
  [SortBy, "SORTBY"],
  [Unique, "UNIQUE"],
  ...blankSafe,
  [If, "IF"],
  [Ifs, "IFS"],
  [Switch, "SWITCH"],
  ...each("AND OR XOR NOT", ofConditions),
  ...each("CONCATENATE CONCAT", joinsValues),
  [TextJoin, "TEXTJOIN"],
  [Proper, "PROPER"],
  [Text, "TEXT"],
  [Fixed, "FIXED"],
  [Edate, "EDATE"],
  [Eomonth, "EOMONTH"],
  [IsoWeek, "ISOWEEKNUM"],
  [WeekNumber, "WEEKNUM"],
  [rounding("ROUND", toNearest), "ROUND"],
  [rounding("ROUNDUP", Math.ceil), "ROUNDUP"],
  ...each("ROUNDDOWN TRUNC", (name) => rounding(name, Math.floor)),
  ...each(
    "ABS ACOS ACOSH ACOT ACOTH ASIN ASINH ATAN ATAN2 ATANH COS COSH EXP LN LOG10 POWER SIN SINH SQRT TAN TANH",
    readsTexts,
  ),
  ...each(
    "AVERAGEA CHISQ.TEST CHITEST CORREL COVAR COVARIANCE.P COVARIANCE.S DEVSQ F.TEST FORECAST FORECAST.LINEAR FTEST GEOMEAN HARMEAN INTERCEPT KURT MEDIAN PEARSON RSQ SKEW SKEW.P SLOPE STDEVPA STEYX T.TEST TRIMMEAN TTEST VARPA",
    passesOverTexts,
  ),
  ...each("STDEV STDEV.S VAR VAR.S", scatter),
  ...each("STDEVA VARA", passesOverTexts),
  ...each("MAXIFS MINIFS", extremeIf),
  ...each("MAXA MINA", extremeOfAll),
];
