import type { Place } from "../../engine/place";
import type { OpenBook } from "./open-book";

/** Selects a cell and brings it into sight. */
export const goTo = (open: OpenBook, { sheet, row, column }: Place): void => {
  const book = open.grid.api.getActiveWorkbook();
  const target = book?.getSheetByName(sheet);
  if (!book || !target) throw new Error(`There is no sheet "${sheet}".`);
  if (book.getActiveSheet().getSheetName() !== sheet) book.setActiveSheet(target);
  target.scrollToCell(Math.max(0, row - 3), Math.max(0, column - 2));
  target.getRange(row, column).activate();
  open.moved();
};
