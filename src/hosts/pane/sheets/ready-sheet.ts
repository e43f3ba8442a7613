import type { Cell } from "../../../definition/cells";

/**
 * A sheet that is ready to be put into a workbook: plain data that any host can write. Rows and columns count from 0.
 * Its formulas name no sheet, so they hold under whatever name it is given.
 */
export interface ReadySheet {
  readonly name: string;
  /** Sparse and in any order. */
  readonly cells: readonly ReadyCell[];
  /** Width by column, in characters of the default font. */
  readonly widths?: ReadonlyMap<number, number>;
  /** Rows and columns that stay while the rest is scrolled. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly tables?: readonly ReadyTable[];
  /** Cells that offer a list of words. */
  readonly choices?: readonly { readonly block: Block; readonly words: readonly string[] }[];
  /** For hosts that draw charts; the others leave it out. */
  readonly chart?: ReadyChart;
}

export interface ReadyCell {
  readonly row: number;
  readonly column: number;
  /** null beside a formula, and where only the look is wanted. */
  readonly value: Cell;
  /** As it is typed, with "=" before it. */
  readonly formula?: string;
  readonly style?: Look;
}

export interface Look {
  /** A number format as a spreadsheet writes it: "0.00", "yyyy-mm-dd". */
  readonly format?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** RRGGBB. */
  readonly fill?: string;
  readonly color?: string;
}

/** A rectangle of cells. */
export interface Block {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Its block holds the heading row and the rows. Formulas do not rest on its name: a host may number it. */
export interface ReadyTable {
  readonly name: string;
  readonly block: Block;
  readonly columns: readonly string[];
}

/** Points and lines over two axes. Only numbers are drawn; a cell with an error leaves a gap. */
export interface ReadyChart {
  readonly kind: "scatter";
  readonly title: string;
  readonly x: ReadyAxis;
  readonly y: ReadyAxis;
  readonly series: readonly ReadySeries[];
  /** The cells it lies over. */
  readonly at: Block;
  /** Cells that only the chart reads: a host without charts leaves them out too. */
  readonly cells: readonly ReadyCell[];
}

export interface ReadyAxis {
  readonly title: string;
  readonly scale: "log" | "linear";
  /** Its ends; left out, those that the numbers ask for. */
  readonly from?: number;
  readonly to?: number;
}

export interface ReadySeries {
  readonly name: string;
  readonly x: Block;
  readonly y: Block;
  readonly drawn: "line" | "points";
  /** RRGGBB. */
  readonly color: string;
}

/** A ready sheet as it is offered. */
export interface Shelved {
  readonly sheet: ReadySheet;
  /** One line. */
  readonly purpose: string;
  readonly holds?: readonly string[];
  /** What to do first in it, told once it is there. */
  readonly begin?: string;
}
