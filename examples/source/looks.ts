import type { Cell } from "../../src/definition/cells";
import { cellsFrom, type Sheet, type SheetCell, type Style } from "../../src/hosts/engine/book";

// How the example sheets look: what a person types stands on white under a green heading, what a formula answers on sand.

export const title: Style = { bold: true };
export const note: Style = { italic: true, color: "5A5A5A" };
export const givenHeading: Style = { bold: true, wrap: true, fill: "CFE0D4" };
export const answerHeading: Style = { bold: true, wrap: true, fill: "F2DFB8" };
export const answer: Style = { fill: "FBF5E6" };
/** A place that waits for a newcomer's own formula. */
export const yours: Style = { bold: true, fill: "FFF2A8" };

/** Three digits for what a magnet does, whole seconds for an hour's hold. */
export const seconds = "[<10]0.000;[<1000]0.0;0";

/** One cell of a look. */
export const one = (row: number, column: number, value: Cell, style?: Style): SheetCell[] =>
  cellsFrom([[value]], { row, column, style });

/** A sheet of paragraphs under a title. */
export const page = (name: string, [heading, ...paragraphs]: readonly string[]): Sheet => ({
  name,
  cells: [
    ...one(0, 0, heading ?? name, title),
    ...paragraphs.flatMap((text, i) => one(i + 2, 0, text, { wrap: true })),
  ],
  widths: new Map([[0, 96]]),
});
