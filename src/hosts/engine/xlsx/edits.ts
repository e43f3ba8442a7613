import type { Cell } from "../../../definition/cells";
import type { Sheet, SheetCell, Style } from "../book";
import type { AroundWish } from "./around-rows";

/** What is to be another in a workbook than in the file it came from. */
export interface BookEdits {
  /** In the order of the file's sheets. */
  readonly sheets: readonly SheetEdits[];
  /** Sheets that come behind those of the file. */
  readonly added: readonly Sheet[];
}

export interface SheetEdits extends AroundWish {
  readonly cells: readonly CellEdit[];
  readonly rows?: ReadonlyMap<number, RowWish>;
}

/** What is asked of a row; left out, it stays. */
export interface RowWish {
  /** In points. */
  readonly height?: number;
  readonly hidden?: true;
}

export interface CellEdit {
  readonly row: number;
  readonly column: number;
  /** What the cell is to hold; left out, what it holds. */
  readonly holds?: Held;
  /** What becomes of its looks; left out, they stay. */
  readonly looks?: { readonly from: Style; readonly to: Style };
}

/** A value that is typed (null: none), or a formula with the value and the extent that it has now. */
export interface Held extends Pick<SheetCell, "formula" | "spill" | "stored"> {
  readonly value: Cell;
}

export const isEdited = ({ cells, rows, columns, frozen, merged }: SheetEdits): boolean =>
  cells.length > 0 || frozen !== undefined || (rows?.size ?? 0) + (columns?.size ?? 0) + (merged?.length ?? 0) > 0;
