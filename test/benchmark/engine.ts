import { catalogue } from "../../src/functions";
import { calculate } from "../../src/hosts/engine/calculate";
import { cellsFrom } from "../hosts/engine/cells-from";
import { processorTime } from "./compare";

/** A log of currents with one formula beside each. */
export const logOf = (formulas: number, formula: (row: number) => string) => ({
  sheets: [
    { name: "Log", cells: cellsFrom(Array.from({ length: formulas }, (_, i) => [21 + (i % 180), formula(i + 1)])) },
  ],
});

/** How long the engine takes over a log, ms of processor time; the first answer is looked at. */
export const engineTime = async (book: ReturnType<typeof logOf>): Promise<number> => {
  const took = processorTime();
  const calculated = await calculate(book, catalogue);
  const ms = took();
  const first = calculated.valueAt({ sheet: "Log", row: 1, column: 1 });
  calculated.close();
  if (typeof first !== "number") throw new Error(`the engine gave no number but ${String(first)}`);
  return ms;
};
