import * as z from "zod/mini";
import { type Conductor, conductorNamed } from "../../contact/conductor";
import { BadInput } from "../../definition/bad-input";
import { type Cell, CellError, sayCell } from "../../definition/cells";
import type { Parameter } from "../../definition/parameter";

/** "2 × 150 mm²": two in parallel on a bench, the name of a cable of two cores to its maker. */
const severalConductors = /^\s*\d+\s*[x×*]/i;

/** A conductor size typed with its unit. A bare number is refused: "10" means two different wires on two continents. */
export const size = (meaning: string): Parameter<Conductor> => ({
  spread: "row",
  schema: z.string().check(z.minLength(1)),
  unit: "",
  meaning: `${meaning}, with its unit: "12 AWG", "250 kcmil", "2.5 mm²" (also mm2); copper`,
  read: (cell: Cell, name: string): Conductor => {
    if (cell instanceof CellError) throw new BadInput(`${name}: the cell holds ${cell.code}; mend that cell first.`);
    if (cell === null || cell === "" || cell === 0) throw new BadInput(`${name} is blank.`);
    const conductor = typeof cell === "string" ? conductorNamed(cell) : undefined;
    if (conductor) return conductor;
    if (typeof cell === "string" && severalConductors.test(cell))
      throw new BadInput(
        `${name}: the size of one conductor is wanted, not ${sayCell(cell)}: of several alike in parallel each carries its part of the current, and of a cable's name only the core counts.`,
      );
    const text = typeof cell === "string" ? sayCell(cell) : `the bare number ${sayCell(cell)}`;
    throw new BadInput(
      `${name}: a conductor size with its unit is wanted, such as "12 AWG", "250 kcmil" or "2.5 mm²", not ${typeof cell === "boolean" ? sayCell(cell) : text}.`,
    );
  },
});
