import type { Book, SheetCell } from "../../engine/book";
import type { Place } from "../../engine/place";
import type { OpenBook } from "./open-book";

/** The formula that makes a cell's value ("" when there is none): as the workbook has it, where the grid still has its own wording of that. */
export const formulaAsRead = ({ view, asRead, shown }: OpenBook, place: Place): string => {
  const now = view?.formulaAt(place) ?? "";
  if (now === "" || !view || !asRead || !shown) return now;
  const anchor = view.spillAt(place) ?? place;
  return cellOf(shown, anchor)?.formula === now ? (cellOf(asRead, anchor)?.formula ?? now) : now;
};

const cellOf = (book: Book, { sheet, row, column }: Place): SheetCell | undefined => {
  const index = indexes.get(book) ?? new Map<string, SheetCell>();
  if (!indexes.has(book)) {
    for (const { name, cells } of book.sheets)
      for (const cell of cells) if (cell.formula !== undefined) index.set(keyOf(name, cell), cell);
    indexes.set(book, index);
  }
  return index.get(keyOf(sheet, { row, column }));
};

/** A workbook is never changed, only taken the place of. */
const indexes = new WeakMap<Book, Map<string, SheetCell>>();

const keyOf = (sheet: string, { row, column }: Pick<Place, "row" | "column">): string => `${row} ${column} ${sheet}`;
