import { parseA1Ref, stringifyA1Ref, toCol } from "@borgar/fx";

/** The size of a sheet. */
export const MOST_ROWS = 1_048_576;
export const MOST_COLUMNS = 16_384;

/** One cell of a workbook; row and column count from 0. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A rectangle of cells on one sheet; row and column count from 0. */
export interface Block {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** "Log!F2", "'Bench log'!F2": the way a host and the memory of calls name a cell. */
export const sayPlace = ({ sheet, row, column }: Place): string =>
  stringifyA1Ref({ context: [sheet], range: { top: row, left: column, bottom: row, right: column } });

/** "F2". */
export const sayCellOf = ({ row, column }: Pick<Place, "row" | "column">): string => `${toCol(column)}${row + 1}`;

/** "F2", or "F2:G5" for more than one cell. */
export const sayBlock = ({ row, column, rows, columns }: Block): string =>
  rows === 1 && columns === 1
    ? sayCellOf({ row, column })
    : `${sayCellOf({ row, column })}:${sayCellOf({ row: row + rows - 1, column: column + columns - 1 })}`;

/** "Log!F2" or "F2" (then on `sheet`) as a place; undefined when it is no single cell. */
export const readPlace = (address: string, sheet = ""): Place | undefined => {
  const reference = parseA1Ref(address);
  if (!reference || !("range" in reference)) return undefined;
  const { top, left, bottom = top, right = left } = reference.range;
  if (top === null || left === null || top !== bottom || left !== right) return undefined;
  return { sheet: reference.context?.at(-1) ?? sheet, row: top, column: left };
};

/** "B2:C5" as a block; undefined when it is not one rectangle with four edges. */
export const readBlock = (text: string): Block | undefined => {
  const reference = parseA1Ref(text);
  if (!reference || !("range" in reference)) return undefined;
  const { top, left, bottom = top, right = left } = reference.range;
  if (top == null || left == null || bottom == null || right == null) return undefined;
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
};

export const isIn = (block: Block, { row, column }: Pick<Place, "row" | "column">): boolean =>
  row >= block.row && row < block.row + block.rows && column >= block.column && column < block.column + block.columns;

/** The smallest block that holds two others. */
export const around = (a: Block, b: Block): Block => {
  const [row, column] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
  return {
    row,
    column,
    rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
    columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
  };
};

/** Whether two blocks share a cell. */
export const overlap = (a: Block, b: Block): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** What tells a cell from the others of its sheet. */
export const keyOf = ({ row, column }: Pick<Place, "row" | "column">): string => `${row} ${column}`;
