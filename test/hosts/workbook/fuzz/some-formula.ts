import type { Chance } from "./chance";

const functions = [
  ...[
    "SUM",
    "IF",
    "IFERROR",
    "INDEX",
    "MATCH",
    "SUMIFS",
    "COUNTIF",
    "TEXT",
    "ROUND",
    "AND",
    "OFFSET",
    "INDIRECT",
    "CHOOSE",
    "SWITCH",
  ],
  ...[
    "_xlfn.LET",
    "_xlfn.LAMBDA",
    "_xlfn.MAP",
    "_xlfn.REDUCE",
    "_xlfn.BYROW",
    "_xlfn.XLOOKUP",
    "_xlfn._xlws.FILTER",
    "_xlfn._xlws.SORT",
  ],
  ...[
    "_xlfn.SEQUENCE",
    "_xlfn.UNIQUE",
    "_xlfn.VSTACK",
    "_xlfn.TAKE",
    "_xlfn.ANCHORARRAY",
    "_xlfn.SINGLE",
    "_xlfn.TEXTJOIN",
    "TRANSPOSE",
  ],
  ...[
    "_xldudf_BIMETAL_CONTACT_WATTS",
    "_xldudf_bimetal_trip_range",
    "BIMETAL.TRIP.VERDICT",
    "bimetal.explain",
    "_xldudf_BIMETAL_NO_SUCH",
  ],
  ...[
    "BIMETAL.THERMAL.FIT",
    "BIMETAL.BENCH.PLAN",
    "BIMETAL.ENCLOSURE.PANEL",
    "[2]!_xldudf_BIMETAL_CONTACT_WATTS",
    "NOSUCH",
    "HYPERLINK",
  ],
];
const leaves = [
  ...["1", "0", "-1", "2.5", "1E3", "1E308", "20", "51", '"C"', '"x"', '""', '"=1+1"', "TRUE", "#N/A", "#REF!"],
  ...[
    "A1",
    "$B$2",
    "A2:A4",
    "A:A",
    "1:3",
    "A1:C9",
    "Log!A2",
    "'Bench log'!A1",
    "Nowhere!A1",
    "[1]Log!A1",
    "Log:Other!A1",
  ],
  ...[
    "Trials[current]",
    "Trials[#All]",
    "Trials[[#This Row],[current]]",
    "Rated",
    "rate",
    "far",
    "Nothing",
    "x",
    "_xlpm.x",
  ],
  ...["{1,2;3,4}", '{"a","b"}', "{1}", "A1#", "XFD1048576", "A1048577", "", "cmd|' /C calc'!A0"],
];
const operators = ["+", "-", "*", "/", "^", "&", "=", "<>", "<", ">=", ":", " ", ","];

/** A formula as a file may hold it; mostly one that can be read, seldom one that means anything. */
export const someFormula = (chance: Chance, depth = 0): string => {
  if (depth > 4 || chance.oneIn(3)) return chance.pick(leaves);
  const part = () => someFormula(chance, depth + 1);
  return chance.pick([
    () => `${part()}${chance.pick(operators)}${part()}`,
    () => `${chance.pick(functions)}(${Array.from({ length: chance.below(4) }, part).join(",")})`,
    () => `${chance.pick(functions)}(${Array.from({ length: 1 + chance.below(3) }, part).join(",")})`,
    () => `(${part()})`,
    () => `${chance.pick(["-", "+", "@", "--"])}${part()}`,
    () => `${part()}${chance.pick(["%", "#", "(1)"])}`,
    () => `_xlfn.LET(_xlpm.x,${part()},${part()})`,
    () => `_xlfn.LAMBDA(_xlpm.x,${part()})(${part()})`,
    () => `_xlfn.MAP(${part()},_xlfn.LAMBDA(_xlpm.x,${part()}))`,
    () => part().replace(/.$/, ""),
  ])();
};
