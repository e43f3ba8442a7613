import { type Argument, isRange, type Range } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import type { Parameter } from "../../../definition/parameter";
import type { Selection } from "../port";

/** Which row of a call, and which of its results, the selected cell shows (both from 0). */
export interface Place {
  readonly row: number;
  readonly column?: number;
  /** Of an answer in rows from one set of inputs: which of them the cell shows. */
  readonly answerRow?: number;
}

/** A call deeper in a formula shows none of its results as they are, so only its first row can be meant. */
export const placeOf = (
  { spill }: Selection,
  isWhole: boolean,
  definition: AnyDefinition,
  args: readonly Argument[],
): Place => {
  if (!isWhole) return { row: 0 };
  if (!spill) return { row: 0, column: 0 };
  if (definition.answers === "rows") return { row: 0, column: spill.column, answerRow: spill.row };
  return liesAcross(definition, args)
    ? { row: spill.column, column: spill.row }
    : { row: spill.row, column: spill.column };
};

/** The ranges of a call lie across, so its answers go down under each of their cells. */
const liesAcross = (definition: AnyDefinition, args: readonly Argument[]): boolean => {
  const parameters = Object.values(definition.parameters as Record<string, Parameter>);
  const ranges = parameters.flatMap((parameter, place) => {
    const argument = args[place];
    if (argument === undefined || !isRange(argument) || parameter.spread !== "row") return [];
    return argument.flat().length > 1 && !isBlock(parameter, argument) ? [argument] : [];
  });
  return ranges.length > 0 && ranges.every((range) => range.length === 1);
};

/** A range taken as one thing for all rows. One that is refused as such is no row of cells either. */
const isBlock = (parameter: Parameter, range: Range): boolean => {
  try {
    return parameter.readBlock?.(range, "") !== undefined;
  } catch {
    return true;
  }
};
