import type { Cell } from "../../definition/cells";
import type { Sheet } from "../engine/book";
import type { Calculated } from "../engine/calculate";
import { sayCellOf } from "../engine/place";

/** More cells than this are not printed. */
const MOST_PRINTED = 5_000_000;

interface Extent {
  readonly rows: number;
  readonly columns: number;
}

/** How far a sheet is filled, looks alone not counted; once calculated, with what its answers fill. */
export const filledExtent = (sheet: Sheet, grid?: Calculated): Extent => {
  let [rows, columns] = [0, 0];
  for (const { row, column, value, formula } of sheet.cells)
    if (value !== null || formula !== undefined)
      [rows, columns] = [Math.max(rows, row + 1), Math.max(columns, column + 1)];
  for (const block of grid?.spillsOn(sheet.name) ?? [])
    [rows, columns] = [Math.max(rows, block.row + block.rows), Math.max(columns, block.column + block.columns)];
  return { rows, columns };
};

/** A sentence when a sheet is too large to be printed. */
export const tooLargeToPrint = (sheet: Sheet, { rows, columns }: Extent): string | undefined =>
  rows * columns > MOST_PRINTED
    ? `The sheet "${sheet.name}" reaches to ${sayCellOf({ row: rows - 1, column: columns - 1 })}: more than the ${MOST_PRINTED} cells that are printed.`
    : undefined;

/** A calculated sheet, row for row. */
export function* sheetRows(sheet: Sheet, { rows, columns }: Extent, grid: Calculated): Generator<Cell[]> {
  for (let row = 0; row < rows; row++)
    yield Array.from({ length: columns }, (_, column) => grid.valueAt({ sheet: sheet.name, row, column }));
}
