import type { Sheet } from "../../src/hosts/engine/book";
import { broken, linesDown, one, title } from "../../src/hosts/pane/sheets/looks";

/** A sheet of paragraphs under a title, a row for each line. */
export const page = (name: string, [heading = name, ...paragraphs]: readonly string[]): Sheet => ({
  name,
  cells: [
    ...one(0, 0, heading, title),
    ...linesDown(
      1,
      0,
      paragraphs.flatMap((text) => ["", ...broken(text, lineLength)]),
    ).filter(({ value }) => value !== ""),
  ],
  widths: new Map([[0, lineLength]]),
});

const lineLength = 100;
