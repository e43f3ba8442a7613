import type { IWorksheetData } from "@univerjs/core";
import { type Cell, holdSame } from "../../../definition/cells";
import type { Sheet, SheetCell } from "../../engine/book";
import { cellValue } from "../../engine/grid-view";
import { keyOf } from "../../engine/place";
import type { GridState } from "./grid-state";

/** What of a sheet still stands as it was read. */
interface Unmoved {
  /** Tables and lists of choices: only while no row or column has been put in or taken out, for the grid does not move them. */
  readonly kept: Pick<Sheet, "tables" | "choices">;
  /** The formula as it was read, where the grid's own wording of it is untouched, or its kept value is. */
  formulaAt(row: number, column: number, formula: string | undefined, value: Cell): Partial<SheetCell>;
}

type Known = Pick<GridState, "asRead" | "shown" | "sizeAtFirst" | "data">;

export const unmoved = (state: Known, sheet: IWorksheetData): Unmoved => {
  const { name } = sheet;
  const read = state.asRead?.sheets.find((one) => one.name === name);
  const shown = state.shown?.sheets.find((one) => one.name === name);
  if (!read || !shown) return { kept: {}, formulaAt: () => ({}) };
  const byPlace = ({ cells }: Sheet) => new Map(cells.map((cell) => [keyOf(cell), cell]));
  const [readCells, shownCells] = [byPlace(read), byPlace(shown)];
  const isSame = isSameSize(state, sheet) && headingsStand(read, sheet);
  return {
    kept: isSame ? { tables: read.tables, choices: read.choices } : {},
    formulaAt: (row, column, formula, value) => {
      const key = keyOf({ row, column });
      const [before, there] = [readCells.get(key), shownCells.get(key)];
      if (before?.formula === undefined || !there) return {};
      const isUntouched =
        there.formula === undefined ? !formula && holdSame(value, there.value) : formula === there.formula;
      // Of a table that goes the grid's wording names the cells.
      if (there.formula !== undefined && before.formula.includes("[") && tablesGo(state)) return {};
      return isUntouched ? { formula: before.formula, stored: before.stored, spill: before.spill } : {};
    },
  };
};

const tablesGo = (state: Known): boolean =>
  (state.asRead?.sheets ?? []).some((read) => {
    if ((read.tables ?? []).length === 0) return false;
    const sheet = Object.values(state.data.sheets).find(({ name }) => name === read.name) as IWorksheetData | undefined;
    return !sheet || !isSameSize(state, sheet) || !headingsStand(read, sheet);
  });

const isSameSize = ({ sizeAtFirst }: Known, { name, rowCount, columnCount }: IWorksheetData): boolean => {
  const size = sizeAtFirst(name);
  return rowCount === size?.rows && columnCount === size?.columns;
};

/** A table's columns go by their headings. */
const headingsStand = ({ tables = [] }: Sheet, { cellData }: IWorksheetData): boolean =>
  tables.every(({ block, columns, heading = true }) =>
    columns.every((text, i) => !heading || cellValue(cellData?.[block.row]?.[block.column + i]) === text),
  );
