import { NoAnswer } from "../metrology/no-answer";
import { BadInput, type Refusal } from "./bad-input";
import { type Answer, type Argument, type Cell, isRange, type Range, sayShape } from "./cells";
import type { AnyDefinition, Row } from "./define";
import { type Parameter, sheetName } from "./parameter";

/** What a call gives: rows of answers; a refused row holds its refusal in each of its cells. */
export type Called = readonly (readonly (Answer | Refusal)[])[];

/**
 * The one road from the cells of a formula to an answer. `undefined` and trailing arguments left out are the same.
 * Bad rows hold their refusal and leave the others alone. Throws only on a defect.
 */
export const call = (definition: AnyDefinition, args: readonly Argument[]): Called => {
  try {
    const inputs = read(definition, args);
    if (definition.answers === "rows") return calculateRows(definition, inputs);
    const rows = answerRows(definition, inputs);
    return inputs.across ? turned(rows) : rows;
  } catch (thrown) {
    return [refused(definition, thrown)];
  }
};

/** The checked inputs of row `index` of a call and its answer, for an explanation. Throws what the row is refused with. */
export const callRow = (
  definition: AnyDefinition,
  args: readonly Argument[],
  index: number,
): { given: Record<string, unknown>; rows: readonly Row[]; of: number } | undefined => {
  const inputs = read(definition, args);
  if (definition.answers === "row" && isBlankRow(inputs.ranges, index)) return undefined;
  fill(inputs, index);
  const answer = definition.calculate(inputs.given);
  const rows = definition.answers === "rows" ? (answer as readonly Row[]) : [answer as Row];
  return { given: { ...inputs.given }, rows, of: definition.answers === "rows" ? 1 : inputs.rows };
};

/** The inputs of a call: one object, filled anew for each row. */
interface Inputs {
  readonly rows: number;
  /** The ranges lay across: the answers go down under each of their cells. */
  readonly across: boolean;
  readonly given: Record<string, unknown>;
  /** The ranges that change from row to row. */
  readonly ranges: readonly Lane[];
}

interface Lane {
  readonly key: string;
  readonly name: string;
  readonly parameter: Parameter;
  readonly cells: readonly Cell[];
}

const read = (definition: AnyDefinition, args: readonly Argument[]): Inputs => {
  const given: Record<string, unknown> = {};
  const lanes: Lane[] = [];
  const columns: Lane[] = [];
  let shape: { range: Range; name: string } | undefined;
  const entries = Object.entries(definition.parameters as Record<string, Parameter>);
  const most = entries.at(-1)?.[1].repeating ? Infinity : entries.length;
  if (args.length > most) throw new BadInput(`${definition.name} takes at most ${most} arguments, not ${args.length}.`);

  entries.forEach(([key, parameter], place) => {
    const name = sheetName(key);
    given[key] = undefined;
    if (parameter.repeating) {
      given[key] = args.slice(place);
      return;
    }
    const argument = args[place];
    if (argument === undefined) {
      if (parameter.otherwise === undefined) throw new BadInput(parameter.ifBlank ?? `${name} is missing.`);
      return;
    }
    if (parameter.spread === "raw") {
      given[key] = argument;
      return;
    }
    if (!isRange(argument)) {
      const lane = { key, name, parameter, cells: [argument] };
      (parameter.spread === "row" ? lanes : columns).push(lane);
      return;
    }
    if (argument.length === 0 || argument[0]?.length === 0) throw new BadInput(`${name}: the range is empty.`);
    const block = parameter.readBlock?.(argument, name);
    if (block !== undefined) {
      given[key] = block;
      return;
    }
    const cells = argument.length === 1 ? (argument[0] as readonly Cell[]) : argument.map((row) => row[0] as Cell);
    if (parameter.spread === "whole") {
      columns.push({ key, name, parameter, cells: argument.flat() });
      return;
    }
    if (argument.length > 1 && (argument[0]?.length ?? 0) > 1)
      throw new BadInput(`${name}: one column or one row is wanted, not ${sayShape(argument)}.`);
    if (cells.length > 1) {
      if (definition.answers === "rows" && parameter.spread === "row")
        throw new BadInput(`${name}: one cell is wanted, not ${sayShape(argument)}.`);
      if (shape && sayShape(shape.range) !== sayShape(argument))
        throw new BadInput(
          `The ranges do not fit: ${shape.name} has ${sayShape(shape.range)}, ${name} has ${sayShape(argument)}.`,
        );
      shape = { range: argument, name };
    }
    (parameter.spread === "row" ? lanes : columns).push({ key, name, parameter, cells });
  });

  readColumns(columns, given);
  const ranges = lanes.filter((lane) => lane.cells.length > 1);
  for (const lane of lanes) if (lane.cells.length === 1) given[lane.key] = readCell(lane, 0, false);
  return {
    rows: ranges[0]?.cells.length ?? 1,
    across: ranges.length > 0 && shape?.range.length === 1,
    given,
    ranges,
  };
};

/** A blank cell, or a 0 that may be one: desktop Excel hands blanks over as 0. */
const isBlank = (cell: Cell): boolean => cell === null || cell === 0 || cell === "";

const readCell = ({ parameter, cells, name }: Lane, row: number, inRange: boolean): unknown => {
  const cell = cells[row] as Cell;
  if (inRange && parameter.blank && isBlank(cell)) return parameter.blank.value;
  return parameter.read(cell, name);
};

/** Lists taken whole: all `column` lists get one length; a row that is blank in all of them is no row. */
const readColumns = (lanes: readonly Lane[], given: Record<string, unknown>): void => {
  const together = lanes.filter(({ parameter }) => parameter.spread === "column");
  const length = Math.max(1, ...together.map(({ cells }) => cells.length));
  const long = together.filter(({ cells }) => cells.length > 1);
  const keep = Array.from({ length }, (_, row) => row).filter(
    (row) => long.length === 0 || !long.every(({ cells }) => isBlank(cells[row] as Cell)),
  );
  if (together.length > 0 && keep.length === 0)
    throw new BadInput(`${together.map(({ name }) => name).join(", ")}: all rows are blank.`);
  for (const lane of lanes) {
    const rows =
      lane.parameter.spread === "column"
        ? keep
        : lane.cells.map((_, row) => row).filter((row) => lane.cells[row] !== null && lane.cells[row] !== "");
    if (rows.length === 0) throw new BadInput(`${lane.name}: all cells are blank.`);
    given[lane.key] = rows.map((row) => {
      const at = lane.cells.length === 1 ? 0 : row;
      // A blank number in a list is the 0 that other hosts make of it.
      const cell = lane.cells[at] === null && lane.parameter.unit !== "" ? 0 : (lane.cells[at] as Cell);
      const named = {
        ...lane,
        name: lane.cells.length === 1 ? lane.name : `${lane.name}, row ${row + 1}`,
        cells: [cell],
      };
      return readCell(named, 0, lane.cells.length > 1);
    });
  }
};

const isBlankRow = (ranges: readonly Lane[], row: number): boolean => {
  for (const { cells } of ranges) if (!isBlank(cells[row] as Cell)) return false;
  return ranges.length > 0;
};

const fill = ({ ranges, given }: Inputs, row: number): void => {
  for (const lane of ranges) given[lane.key] = readCell(lane, row, true);
};

/** The long columns' loop: nothing is made for a row but its answers. */
const answerRows = (definition: AnyDefinition, inputs: Inputs): (readonly (Answer | Refusal)[])[] => {
  const rows: (readonly (Answer | Refusal)[])[] = new Array(inputs.rows);
  const blank = definition.results.map(() => "");
  for (let row = 0; row < inputs.rows; row++) {
    try {
      if (isBlankRow(inputs.ranges, row)) {
        rows[row] = blank;
        continue;
      }
      fill(inputs, row);
      rows[row] = definition.calculate(inputs.given) as Row;
    } catch (thrown) {
      rows[row] = refused(definition, thrown);
    }
  }
  return rows;
};

const calculateRows = (definition: AnyDefinition, inputs: Inputs): Called =>
  definition.calculate(inputs.given) as readonly Row[];

const refused = (definition: AnyDefinition, thrown: unknown): readonly Refusal[] => {
  if (thrown instanceof BadInput || thrown instanceof NoAnswer) return definition.results.map(() => thrown);
  throw thrown;
};

const turned = <T>(rows: readonly (readonly T[])[]): T[][] =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] as T));
