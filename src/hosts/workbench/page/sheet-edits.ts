import type { IRange, IWorksheetData } from "@univerjs/core";
import { type Cell, holdSame } from "../../../definition/cells";
import { looks, type Sheet, type SheetCell, type Style } from "../../engine/book";
import { cellValue } from "../../engine/grid-view";
import { type Block, isIn, keyOf } from "../../engine/place";
import { cellSnapshot } from "../../engine/snapshot";
import { CannotKeep } from "../../engine/xlsx/cannot-keep";
import type { CellEdit, Held, SheetEdits } from "../../engine/xlsx/edits";
import { frozenOf, gridCells } from "./book-from-grid";
import type { GridState } from "./grid-state";
import { columnWishes, rowWishes } from "./line-wishes";
import { styleOf } from "./style-of";

interface SheetSince {
  /** As the file has it. */
  readonly read: Sheet;
  /** As the grid got it. */
  readonly shown: Sheet;
  readonly now: IWorksheetData;
  readonly state: GridState;
}

/** What was changed on one sheet since it was opened. */
export const sheetEdits = (since: SheetSince): SheetEdits => {
  const { read, shown, now } = since;
  const typed = typedCells(since);
  const table = (read.tables ?? []).find(({ block, heading = true }) =>
    typed.some((edit) => edit.holds && heading && isIn({ ...block, rows: 1 }, edit)),
  );
  if (table) throw new CannotKeep(`a heading of the table ${table.name} was changed`);
  const columns = new Map(columnWishes(shown, now));
  const rows = new Map(rowWishes(now));
  const before = shown.frozen ?? { rows: 0, columns: 0 };
  const frozen = frozenOf(now);
  const merged = (now.mergeData ?? []).map(blockOf);
  return {
    cells: [...typed, ...filledBefore(since, typed)],
    ...(columns.size > 0 && { columns }),
    ...(rows.size > 0 && { rows }),
    ...((frozen.rows !== before.rows || frozen.columns !== before.columns) && { frozen }),
    ...(merged.length > 0 && { merged }),
  };
};

/** Cells that were typed into, cleared or given another look. */
const typedCells = ({ shown, now, state }: SheetSince): CellEdit[] => {
  const before = new Map(shown.cells.map((cell) => [keyOf(cell), cell]));
  const spills = new Map(state.view.spillsOn(now.name).map((block) => [keyOf(block), block]));
  const there = gridCells(state, now);
  const seen = new Set(there.map(keyOf));
  const gone = shown.cells.filter((cell) => !seen.has(keyOf(cell)));
  const edits = there.map((cell) => {
    const held = holdsOf(before.get(keyOf(cell)));
    const { row, column } = cell;
    const value = cell.value === "" && held.value !== "" ? null : cell.value;
    const isSame = cell.formula === held.formula && (cell.formula !== undefined || holdSame(value, held.value));
    const place = { sheet: now.name, row, column };
    const holds: Held | undefined = isSame
      ? undefined
      : cell.formula === undefined
        ? { value }
        : { value: state.view.valueAt(place), formula: cell.formula, spill: spills.get(keyOf(cell)) };
    return edit(cell, holds, held.style, styleOf(cell.cell.s, state.data.styles) ?? {});
  });
  const cleared = gone.map((cell) => {
    const { formula, value, style } = holdsOf(cell);
    return edit(cell, formula === undefined && value === null ? undefined : { value: null }, style, {});
  });
  return [...edits, ...cleared].flat();
};

const edit = (place: Pick<CellEdit, "row" | "column">, holds: Held | undefined, from: Style, to: Style): CellEdit[] => {
  const { row, column } = place;
  const isAlike = looks.every((what) => from[what] === to[what]);
  return holds || !isAlike ? [{ row, column, ...(holds && { holds }), ...(!isAlike && { looks: { from, to } }) }] : [];
};

/** What the grid got to hold for a cell, in its own way of holding it. */
const holdsOf = (cell: SheetCell | undefined): { formula: string | undefined; value: Cell; style: Style } => {
  const held = cell && cellSnapshot(cell);
  return { formula: held?.f ?? undefined, value: cellValue(held), style: styleOf(held?.s, {}) ?? {} };
};

/**
 * Answers of the file that lost their formula, or into whose cells something was typed: of the first kind the cells hold nothing any
 * more; an array of the old kind, which no spreadsheet would let be broken, becomes one that finds no room.
 */
const filledBefore = ({ read, shown, state }: SheetSince, typed: readonly CellEdit[]): CellEdit[] => {
  const into = typed.filter(({ holds }) => holds);
  const edited = new Set(into.map(keyOf));
  const stays = new Set(shown.cells.flatMap((cell) => (cell.value === null ? [] : keyOf(cell))));
  const known = new Map(typed.map((one) => [keyOf(one), one]));
  const more: CellEdit[] = [];
  for (const { row, column, formula, spill, stored, value: before } of read.cells) {
    if (formula === undefined || !spill || spill.rows * spill.columns === 1) continue;
    const place = { row, column };
    const anchor = keyOf(place);
    const block = { ...place, ...spill };
    const isGone = edited.has(anchor);
    const isBroken = stored === "fixed" && !isGone && into.some((one) => isIn(block, one));
    if (!isGone && !isBroken) continue;
    if (isBroken) {
      const value = stays.has(anchor) ? before : state.view.valueAt({ sheet: read.name, ...place });
      more.push({ ...known.get(anchor), ...place, holds: { value, formula, spill: { rows: 1, columns: 1 } } });
    }
    for (const one of placesOf(block)) {
      const key = keyOf(one);
      if (key !== anchor && !edited.has(key) && !stays.has(key))
        more.push({ ...known.get(key), ...one, holds: { value: null } });
    }
  }
  return more;
};

const placesOf = ({ row, column, rows, columns }: Block): { row: number; column: number }[] =>
  Array.from({ length: rows * columns }, (_, i) => ({
    row: row + Math.floor(i / columns),
    column: column + (i % columns),
  }));

const blockOf = ({ startRow, endRow, startColumn, endColumn }: IRange): Block => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});
