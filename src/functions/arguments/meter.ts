import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { type Cell, type Range, sayCell } from "../../definition/cells";
import { blankMeans, optional, type Parameter, plain, quantity } from "../../definition/parameter";

export const reading = quantity("", "the meter's reading, in its own unit", z.number());

export const currentUncertainty = quantity(
  "A",
  "standard uncertainty of the current, as METER.ERROR or METER.REPEATS gives it",
);

export const dropUncertainty = quantity(
  "V",
  "standard uncertainty of the drop, as METER.ERROR or METER.REPEATS gives it",
);

export const correlation = optional(
  blankMeans(
    quantity(
      "",
      "how far the two move together, −1 to 1 (CORREL of readings taken in pairs)",
      z.number().check(z.minimum(-1), z.maximum(1)),
    ),
    0,
  ),
  "0, independent",
);

/** Degrees of freedom of the two uncertainties; Infinity: known well, as from a specification. */
export interface DegreesPair {
  readonly current: number;
  readonly drop: number;
}

const readDegrees = (cell: Cell, name: string): number => {
  if (typeof cell === "number" && cell >= 1 && cell <= 1e6) return cell;
  if (typeof cell === "string" && plain(cell) === "many") return Infinity;
  throw new BadInput(
    `${name}: a number from 1 to 1,000,000, or "many" for an uncertainty from a specification, is wanted, not ${sayCell(cell)}.`,
  );
};

/** One cell for both, or two cells side by side. */
export const degrees: Parameter<DegreesPair | undefined> = {
  spread: "row",
  schema: z.union([z.number().check(z.minimum(1)), z.literal("many")]),
  unit: "",
  meaning:
    'degrees of freedom of the two uncertainties: two cells side by side (current, drop), or one for both; n − 1 for n repeats, "many" for a specification',
  otherwise: "many: k = 2",
  read: (cell, name) => {
    const both = readDegrees(cell, name);
    return { current: both, drop: both };
  },
  readBlock: (range: Range, name) => {
    const [row] = range;
    if (range.length !== 1 || row?.length !== 2) return undefined;
    return { current: readDegrees(row[0] as Cell, name), drop: readDegrees(row[1] as Cell, name) };
  },
};

/** A limit of a value: a number, or none. */
const limit = (meaning: string): Parameter<number | undefined> => {
  const number = quantity("", meaning, z.number());
  return {
    ...number,
    schema: z.union([z.number(), z.literal("none")]),
    otherwise: "none",
    read: (cell, name) => {
      if (typeof cell === "number") return number.read(cell, name);
      if (cell === null || (typeof cell === "string" && (cell === "" || plain(cell) === "none"))) return undefined;
      throw new BadInput(`${name}: a number, or "none", is wanted, not ${sayCell(cell)}.`);
    },
  };
};

export const lower = limit('the lowest value allowed, in the unit of the value; blank or "none": no such limit');
export const upper = limit('the highest value allowed, in the unit of the value; blank or "none": no such limit');
