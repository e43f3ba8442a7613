import { BadInput } from "./bad-input";
import { type Cell, type Range, sayShape } from "./cells";
import { type Parameter, sheetName } from "./parameter";

/** One argument as a list of cells. The range itself is kept: a long column is not copied. */
export interface Lane {
  readonly key: string;
  readonly name: string;
  readonly parameter: Parameter;
  readonly range: Range;
  readonly across: boolean;
  readonly length: number;
}

export const laneOf = (key: string, parameter: Parameter, range: Range): Lane => {
  const across = range.length === 1;
  return {
    key,
    name: sheetName(key),
    parameter,
    range,
    across,
    length: across ? (range[0]?.length ?? 0) : range.length,
  };
};

export const cellAt = ({ range, across }: Lane, at: number): Cell =>
  (across ? range[0]?.[at] : (range[at] as readonly Cell[])[0]) as Cell;

/** Refuses a block where the cells of one column or one row are wanted. */
export const refuseBlock = (range: Range, name: string): void => {
  if (range.length > 1 && (range[0]?.length ?? 0) > 1)
    throw new BadInput(`${name}: one column or one row is wanted, not ${sayShape(range)}.`);
};

/** A blank cell, or a 0 that may be one: desktop Excel hands blanks over as 0. */
const isBlank = (cell: Cell): boolean => cell === null || cell === 0 || cell === "";

/** A cell of a range, in which a blank one may have a meaning of its own. */
export const readInRange = ({ parameter, name }: Lane, cell: Cell): unknown =>
  parameter.blank && isBlank(cell) ? parameter.blank.value : parameter.read(cell, name);

/** Lists taken whole: all `column` lists get one length; a row that is blank in all of them is no row. */
export const readColumns = (lanes: readonly Lane[], given: Record<string, unknown>): void => {
  const together = lanes.filter(({ parameter }) => parameter.spread === "column");
  const long = together.filter(({ length }) => length > 1);
  const rowsOf = (length: number): number[] => Array.from({ length }, (_, row) => row);
  const keep = rowsOf(long[0]?.length ?? 1).filter((row) => !isBlankRow(long, row));
  if (together.length > 0 && keep.length === 0)
    throw new BadInput(`${together.map(({ name }) => name).join(", ")}: all rows are blank.`);
  for (const lane of lanes) {
    const isColumn = lane.parameter.spread === "column";
    const rows = isColumn ? keep : rowsOf(lane.length).filter((row) => !["", null].includes(cellAt(lane, row) as null));
    if (rows.length === 0) throw new BadInput(`${lane.name}: all cells are blank.`);
    given[lane.key] = rows.map((row) => readListed(lane, row));
  }
};

/** One cell of a list; one cell stands for all rows. */
const readListed = (lane: Lane, row: number): unknown => {
  const { parameter, name, length } = lane;
  const cell = cellAt(lane, length === 1 ? 0 : row);
  if (length > 1 && parameter.blank && isBlank(cell)) return parameter.blank.value;
  // A blank number in a list is the 0 that other hosts make of it.
  const taken = cell === null && parameter.unit !== "" ? 0 : cell;
  return parameter.read(taken, length === 1 ? name : `${name}, row ${row + 1}`);
};

export const isBlankRow = (ranges: readonly Lane[], row: number): boolean => {
  for (let i = 0; i < ranges.length; i++) if (!isBlank(cellAt(ranges[i] as Lane, row))) return false;
  return ranges.length > 0;
};
