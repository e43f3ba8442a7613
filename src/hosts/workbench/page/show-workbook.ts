import type { AnyDefinition } from "../../../definition/define";
import type { Book } from "../../engine/book";
import { circularCells } from "../../engine/circles";
import { type Kept, readable } from "../../engine/readable";
import type { OpenBook } from "./open-book";

/**
 * Shows a workbook in the grid. Gives the formulas that the grid cannot calculate as a spreadsheet would: they show the
 * values they had.
 */
export const showWorkbook = async (
  open: OpenBook,
  book: Book,
  catalogue: readonly AnyDefinition[],
): Promise<readonly Kept[]> => {
  const first = readable(book, catalogue);
  await open.open(first.book);
  if (!open.view?.isCircular()) return first.kept;
  const circles = circularCells(first.book).map((place) => [place, "It leads back to itself."] as const);
  const second = readable(book, catalogue, new Map(circles));
  await open.open(second.book);
  return second.kept;
};
