import type { Book, Sheet, SheetCell } from "./book";
import type { GridView } from "./grid-view";
import { keyOf } from "./place";

/** A book with the values of a calculation beside its formulas, and the cells that its answers fill: ready to be written. */
export const withValues = (book: Book, view: GridView): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({ ...sheet, cells: filledCells(sheet, view) })),
});

const filledCells = (sheet: Sheet, view: GridView): SheetCell[] => {
  const cells = new Map(sheet.cells.map((cell) => [keyOf(cell), cell]));
  const valueAt = (row: number, column: number) => view.valueAt({ sheet: sheet.name, row, column });
  for (const [key, cell] of cells)
    if (cell.formula !== undefined)
      cells.set(key, {
        ...cell,
        value: valueAt(cell.row, cell.column),
        ...(cell.stored === undefined && { spill: undefined }),
      });
  for (const { row: top, column: left, rows, columns } of view.spillsOn(sheet.name))
    for (let row = top; row < top + rows; row++)
      for (let column = left; column < left + columns; column++) {
        const key = keyOf({ row, column });
        const isFirst = row === top && column === left;
        const cell = cells.get(key);
        if (isFirst && cell)
          cells.set(key, { ...cell, ...(cell.stored === undefined && { spill: { rows, columns } }) });
        else cells.set(key, { row, column, value: valueAt(row, column), ...(cell?.style && { style: cell.style }) });
      }
  return [...cells.values()];
};
