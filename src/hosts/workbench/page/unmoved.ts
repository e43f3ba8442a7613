import type { IWorksheetData } from "@univerjs/core";
import { type Cell, CellError } from "../../../definition/cells";
import type { Sheet, SheetCell } from "../../engine/book";
import type { GridState } from "./grid-state";

/** What of a sheet still stands as it was read. */
interface Unmoved {
  /** Tables and lists of choices: only while no row or column has been put in or taken out, for the grid does not move them. */
  readonly kept: Pick<Sheet, "tables" | "choices">;
  /** The formula as it was read, where the grid's own wording of it is untouched, or its kept value is. */
  formulaAt(row: number, column: number, formula: string | undefined, value: Cell): Partial<SheetCell>;
}

export const unmoved = (
  open: Pick<GridState, "asRead" | "shown" | "sizeAtFirst">,
  { name, rowCount, columnCount }: IWorksheetData,
): Unmoved => {
  const read = open.asRead?.sheets.find((sheet) => sheet.name === name);
  const shown = open.shown?.sheets.find((sheet) => sheet.name === name);
  if (!read || !shown) return { kept: {}, formulaAt: () => ({}) };
  const byPlace = ({ cells }: Sheet) => new Map(cells.map((cell) => [`${cell.row} ${cell.column}`, cell]));
  const [readCells, shownCells] = [byPlace(read), byPlace(shown)];
  const headingsStand = (read.tables ?? []).every(({ block, columns, heading = true }) =>
    columns.every((text, i) => !heading || readCells.get(`${block.row} ${block.column + i}`)?.value === text),
  );
  const size = open.sizeAtFirst(name);
  const isSameSize = rowCount === size?.rows && columnCount === size?.columns;
  return {
    kept: isSameSize && headingsStand ? { tables: read.tables, choices: read.choices } : {},
    formulaAt: (row, column, formula, value) => {
      const before = readCells.get(`${row} ${column}`);
      const there = shownCells.get(`${row} ${column}`);
      if (before?.formula === undefined || !there) return {};
      const isUntouched =
        there.formula === undefined ? !formula && same(value, there.value) : formula === there.formula;
      return isUntouched ? { formula: before.formula, stored: before.stored, spill: before.spill } : {};
    },
  };
};

const same = (a: Cell, b: Cell): boolean =>
  a === b || (a instanceof CellError && b instanceof CellError && a.code === b.code);
