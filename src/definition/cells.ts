/** An error that stands in a cell and was handed to a function: "#N/A", "#DIV/0!" … */
export class CellError {
  constructor(readonly code: string) {}
}

/** What one cell may hold. A blank cell is `null` (some hosts hand it over as 0). */
export type Cell = number | string | boolean | null | CellError;

/** A range, row by row. */
export type Range = readonly (readonly Cell[])[];

/** What stands in one place of a formula: a cell, a range, or nothing (left out). */
export type Argument = Cell | Range | undefined;

/** What a function may put into one cell. "" shows as an empty cell. */
export type Answer = number | string | boolean;

/** Whether two cells hold the same; errors are the same by their codes. */
export const holdSame = (a: Cell, b: Cell): boolean =>
  a === b || (a instanceof CellError && b instanceof CellError && a.code === b.code);

export const isRange = (argument: Argument): argument is Range => Array.isArray(argument);

/** A text in a sentence: on one line, and cut where it runs on. */
export const sayText = (text: string): string => {
  const line = text.replace(/\s+/g, " ");
  return line.length > 40 ? `${line.slice(0, 40)}…` : line;
};

/** A cell in a sentence: text in quotes, so that "20" and 20 differ. */
export const sayCell = (cell: Cell): string => {
  if (cell === null) return "a blank cell";
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return String(cell);
  return `the text "${sayText(cell)}"`;
};

/** A range's shape in a sentence: "3 rows × 1 column". */
export const sayShape = (range: Range): string => {
  const rows = range.length;
  const columns = range[0]?.length ?? 0;
  return `${rows} ${rows === 1 ? "row" : "rows"} × ${columns} ${columns === 1 ? "column" : "columns"}`;
};
