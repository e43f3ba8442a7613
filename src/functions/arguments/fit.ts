import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { CellError, sayCell } from "../../definition/cells";
import type { Parameter } from "../../definition/parameter";
import type { Fitted } from "../../thermal/fitted";
import { isFitBlock, readFit } from "./fit-block";

const whatToDo = ({ code }: CellError): string =>
  code === "#SPILL!"
    ? "clear the cells that its block needs, to the right of THERMAL.FIT and below it"
    : "THERMAL.FIT says there what the trials lack";

/** One breaker as THERMAL.FIT spilled it, for all rows. */
export const fit: Parameter<Fitted> = {
  spread: "row",
  schema: z.string(),
  unit: "",
  meaning:
    "one breaker's own pickup, time constant and scatter: the whole block that THERMAL.FIT spills (its cell with #)",
  read: (cell, name) => {
    if (cell instanceof CellError) throw new BadInput(`${name}: the cell holds ${cell.code}; ${whatToDo(cell)}.`);
    throw new BadInput(`${name}: the whole block that THERMAL.FIT spills is wanted as a range, not ${sayCell(cell)}.`);
  },
  readBlock: (range, name) => {
    if (isFitBlock(range)) return readFit(range, name);
    const first = range[0]?.[0];
    if (first instanceof CellError) throw new BadInput(`${name}: the block holds ${first.code}; ${whatToDo(first)}.`);
    throw new BadInput(`${name}: the whole block that THERMAL.FIT spills is wanted, beginning with its row "pickup".`);
  },
};
