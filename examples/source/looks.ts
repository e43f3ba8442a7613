import type { Cell } from "../../src/definition/cells";
import { cellsFrom, type Sheet, type SheetCell, type Style } from "../../src/hosts/engine/book";

// How the example sheets look: what a person types stands on white under a green heading, what a formula answers on sand.

export const title: Style = { bold: true };
export const note: Style = { italic: true, color: "5A5A5A" };
export const givenHeading: Style = { bold: true, fill: "CFE0D4" };
export const answerHeading: Style = { bold: true, fill: "F2DFB8" };
export const answer: Style = { fill: "FBF5E6" };
/** A place that waits for a newcomer's own formula. */
export const yours: Style = { bold: true, fill: "FFF2A8" };

/** Hundredths for a trip within a minute or so, whole seconds for an hour's hold. */
export const seconds = "[<0.0005]0_);[<100]0.00_);0_)";

/** One cell of a look. */
export const one = (row: number, column: number, value: Cell, style?: Style): SheetCell[] =>
  cellsFrom([[value]], { row, column, style });

/** A sheet of paragraphs under a title, a row for each line: rows that wrap are as high as they should be in few programs. */
export const page = (name: string, [heading = name, ...paragraphs]: readonly string[]): Sheet => ({
  name,
  cells: [
    ...one(0, 0, heading, title),
    ...cellsFrom(
      paragraphs.flatMap((text) => [[null], ...linesOf(text).map((line) => [line])]),
      { row: 1 },
    ),
  ],
  widths: new Map([[0, lineLength]]),
});

const lineLength = 100;

const linesOf = (text: string): string[] => {
  const lines = [""];
  for (const word of text.split(" ")) {
    const line = lines.pop() ?? "";
    if (line.length + word.length >= lineLength) lines.push(line, word);
    else lines.push(line === "" ? word : `${line} ${word}`);
  }
  return lines;
};
