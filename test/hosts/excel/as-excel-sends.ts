import { type Cell, CellError, isRange, type Range } from "../../../src/definition/cells";
import type { AnyDefinition } from "../../../src/definition/define";
import type { Parameter } from "../../../src/definition/parameter";
import { errorCell } from "./excel-host";

/**
 * The cells of a formula as Excel hands them to a function whose metadata ask for matrices: one for each parameter, also for a
 * single cell, null for one left out, and a list of matrices for a repeating one.
 */
export const asExcelSends = (definition: AnyDefinition, cells: readonly (Cell | Range)[]): unknown[] => {
  const parameters = Object.values(definition.parameters as Record<string, Parameter>);
  const matrices = cells.map(matrixOf);
  return parameters.map(({ repeating }, place) => {
    if (!repeating) return matrices[place] ?? null;
    const rest = matrices.slice(place);
    return rest.length > 0 ? rest : null;
  });
};

/** `null` among the cells of an example is an argument left out; a blank cell stands in a range. */
const matrixOf = (argument: Cell | Range): unknown[][] | null => {
  if (argument === null) return null;
  return isRange(argument) ? argument.map((row) => row.map(wire)) : [[wire(argument)]];
};

const wire = (cell: Cell): unknown => (cell instanceof CellError ? errorCell(cell.code) : cell);
