import type { Cell } from "../../definition/cells";
import type { Block } from "./place";

/** A workbook as this program reads, calculates and writes it: values, formulas, and the little of its looks that is kept. */
export interface Book {
  readonly sheets: readonly Sheet[];
  readonly names?: readonly DefinedName[];
  /** Dates count days from 1904 instead of 1900, as in workbooks of old Macs. */
  readonly countsFrom1904?: boolean;
}

export interface Sheet {
  readonly name: string;
  /** Sparse and in any order; a place that is not listed is blank. */
  readonly cells: readonly SheetCell[];
  /** Width by column, in characters of the default font. */
  readonly widths?: ReadonlyMap<number, number>;
  /** Rows and columns that stay while the rest is scrolled. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly tables?: readonly Table[];
  /** Cells that offer a list of words. */
  readonly choices?: readonly { readonly block: Block; readonly words: readonly string[] }[];
}

export interface SheetCell {
  readonly row: number;
  readonly column: number;
  /** What the cell shows; beside a formula, the value it had when it was last calculated (null: never). */
  readonly value: Cell;
  /** As it is typed, with "=" before it. */
  readonly formula?: string;
  /** The rows and columns that the formula's answer fills, itself included; left out, one cell. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  /** `fixed`: an array formula of the old kind, whose block does not grow or shrink. `single`: stored as a one-cell formula. */
  readonly stored?: "fixed" | "single";
  /** Formulas of one sheet with the same word here are written once in the file, and moved from cell to cell. */
  readonly shared?: string;
  readonly style?: Style;
}

export interface Style {
  /** A number format as a spreadsheet writes it: "0.00", "yyyy-mm-dd". */
  readonly format?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** RRGGBB. */
  readonly fill?: string;
  readonly color?: string;
  readonly wrap?: boolean;
}

/** All that a style says. */
export const looks: readonly (keyof Style)[] = ["format", "bold", "italic", "fill", "color", "wrap"];

/** A table: its block holds the heading row, the rows and the totals row. */
export interface Table {
  readonly name: string;
  readonly block: Block;
  readonly columns: readonly string[];
  /** False when the table has no heading row. */
  readonly heading?: boolean;
  readonly totals?: boolean;
}

export interface DefinedName {
  readonly name: string;
  /** What it stands for, without "=": "Log!$B$2". */
  readonly formula: string;
  /** The sheet on which alone it is known. */
  readonly sheet?: string;
}

export const hasFormulas = ({ sheets }: Pick<Book, "sheets">): boolean =>
  sheets.some(({ cells }) => cells.some(({ formula }) => formula !== undefined));
