import type { Cell } from "../../../definition/cells";
import { linesOf } from "../../../definition/lines-of";
import { tied } from "../explain/tied";
import type { Look, ReadyCell } from "./ready-sheet";

// How our sheets look: what a person types stands on white under a green heading, what a formula answers on sand.

export const title: Look = { bold: true };
export const note: Look = { italic: true, color: "5A5A5A" };
export const givenHeading: Look = { bold: true, fill: "CFE0D4" };
export const answerHeading: Look = { bold: true, fill: "F2DFB8" };
export const answer: Look = { fill: "FBF5E6" };
/** A place that waits to be changed, or for a newcomer's own formula. */
export const yours: Look = { bold: true, fill: "FFF2A8" };

/** Hundredths for a trip within a minute or so, whole seconds for an hour's hold. */
export const seconds = "[<0.0005]0_);[<100]0.00_);0_)";

/** One cell of a look; a text that starts with "=" is a formula. */
export const one = (row: number, column: number, value: Cell, style?: Look): ReadyCell[] => [
  typeof value === "string" && value.startsWith("=")
    ? { row, column, value: null, formula: value, style }
    : { row, column, value, style },
];

/** Lines of text below each other. */
export const linesDown = (row: number, column: number, lines: readonly string[], style?: Look): ReadyCell[] =>
  lines.flatMap((line, i) => one(row + i, column, line, style));

/** A paragraph as lines of a length: rows that wrap are as high as they should be in few programs. */
export const broken = (text: string, length: number): string[] => linesOf(tied(text), length);
