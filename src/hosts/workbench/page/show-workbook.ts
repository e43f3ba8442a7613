import type { AnyDefinition } from "../../../definition/define";
import type { Book } from "../../engine/book";
import { circularCells } from "../../engine/circles";
import { keyOf } from "../../engine/place";
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
  await open.open(withLooks(first.book, book), book);
  if (!open.view?.isCircular()) return first.kept;
  const circles = circularCells(first.book).map((place) => [place, "It leads back to itself."] as const);
  const second = readable(book, catalogue, new Map(circles));
  await open.open(withLooks(second.book, book), book);
  return second.kept;
};

/** The cells that an answer is going to fill are empty in the engine's words; here they get their formats and colours back. */
const withLooks = (book: Book, original: Book): Book => ({
  ...book,
  sheets: book.sheets.map((sheet, i) => {
    const there = new Set(sheet.cells.map(keyOf));
    const bare = (original.sheets[i]?.cells ?? []).filter((cell) => cell.style && !there.has(keyOf(cell)));
    return {
      ...sheet,
      cells: [...sheet.cells, ...bare.map(({ row, column, style }) => ({ row, column, style, value: null }))],
    };
  }),
});
