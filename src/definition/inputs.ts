import { BadInput } from "./bad-input";
import { type Argument, isRange, sayShape } from "./cells";
import type { AnyDefinition } from "./define";
import { cellAt, isBlankRow, type Lane, laneOf, readColumns, readInRange, refuseBlock } from "./lane";
import { type Parameter, sheetName } from "./parameter";

/** The inputs of a call: one object, filled anew for each row. */
export interface Inputs {
  readonly rows: number;
  /** The ranges lay across: the answers go down under each of their cells. */
  readonly across: boolean;
  readonly given: Record<string, unknown>;
  /** The ranges that change from row to row. */
  readonly ranges: readonly Lane[];
}

/** Reads what does not change from row to row, and finds the ranges that do. Throws BadInput for what spoils the whole call. */
export const readInputs = (definition: AnyDefinition, args: readonly Argument[]): Inputs => {
  const entries = Object.entries(definition.parameters as Record<string, Parameter>);
  const most = entries.at(-1)?.[1].repeating ? Infinity : entries.length;
  if (args.length > most) throw new BadInput(`${definition.name} takes at most ${most} arguments, not ${args.length}.`);
  const given: Record<string, unknown> = {};
  const lanes: Lane[] = [];
  entries.forEach(([key, parameter], place) => {
    given[key] = undefined;
    if (parameter.repeating) given[key] = args.slice(place);
    else if (parameter.spread === "raw") given[key] = args[place];
    else {
      const taken = take(key, parameter, args[place]);
      if (taken && "block" in taken) given[key] = taken.block;
      else if (taken) lanes.push(taken);
    }
  });
  const across = fitting(lanes, definition.answers === "rows");
  readColumns(
    lanes.filter(({ parameter }) => parameter.spread !== "row"),
    given,
  );
  const single = lanes.filter(({ parameter, length }) => parameter.spread === "row" && length === 1);
  for (const lane of single) given[lane.key] = lane.parameter.read(cellAt(lane, 0), lane.name);
  const ranges = lanes.filter(({ parameter, length }) => parameter.spread === "row" && length > 1);
  return { rows: ranges[0]?.length ?? 1, across: ranges.length > 0 && across, given, ranges };
};

/** One argument as a lane of cells, or read as one block; undefined where it may be left out and is. */
const take = (
  key: string,
  parameter: Parameter,
  argument: Argument,
): Lane | { readonly block: unknown } | undefined => {
  const name = sheetName(key);
  if (argument === undefined) {
    if (parameter.otherwise === undefined) throw new BadInput(parameter.ifBlank ?? `${name} is missing.`);
    return undefined;
  }
  if (!isRange(argument)) return laneOf(key, parameter, [[argument]]);
  if (argument.length === 0 || argument[0]?.length === 0) throw new BadInput(`${name}: the range is empty.`);
  // Some hosts hand every cell over as a range of one, others none: to the road it is a cell.
  if (argument.length === 1 && argument[0]?.length === 1) return laneOf(key, parameter, argument);
  const block = parameter.readBlock?.(argument, name);
  if (block !== undefined) return { block };
  if (parameter.spread === "whole") return laneOf(key, parameter, [argument.flat()]);
  refuseBlock(argument, name);
  return laneOf(key, parameter, argument);
};

/** Ranges of one call have one shape (lists of their own length apart); tells whether it lies across. */
const fitting = (lanes: readonly Lane[], oneCellOnly: boolean): boolean => {
  const long = lanes.filter(({ parameter, length }) => length > 1 && parameter.spread !== "whole");
  const [first] = long;
  for (const lane of long) {
    if (oneCellOnly && lane.parameter.spread === "row")
      throw new BadInput(`${lane.name}: one cell is wanted, not ${sayShape(lane.range)}.`);
    if (first && sayShape(first.range) !== sayShape(lane.range))
      throw new BadInput(
        `The ranges do not fit: ${first.name} has ${sayShape(first.range)}, ${lane.name} has ${sayShape(lane.range)}.`,
      );
  }
  return first?.across ?? false;
};

/** Puts the inputs of a row into their places; false where all its cells are blank. Each cell of a long column comes by here. */
export const fill = ({ ranges, given }: Inputs, row: number): boolean => {
  if (isBlankRow(ranges, row)) return false;
  for (let i = 0; i < ranges.length; i++) {
    const lane = ranges[i] as Lane;
    given[lane.key] = readInRange(lane, cellAt(lane, row));
  }
  return true;
};
