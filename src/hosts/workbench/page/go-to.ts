import type { Place } from "../../engine/place";
import type { OpenBook } from "./open-book";

/** So near the top a cell is in sight without scrolling down. */
const rowsInSight = 12;

/** Selects a cell and brings it into sight. */
export const goTo = (open: OpenBook, { sheet, row, column }: Place): void => {
  const book = open.grid.api.getActiveWorkbook();
  const target = book?.getSheetByName(sheet);
  if (!book || !target) throw new Error(`There is no sheet "${sheet}".`);
  if (book.getActiveSheet().getSheetName() !== sheet) book.setActiveSheet(target);
  const seen = target.getVisibleRange();
  const isSeen =
    seen && row >= seen.startRow && row < seen.endRow && column >= seen.startColumn && column < seen.endColumn;
  if (!isSeen) target.scrollToCell(row < rowsInSight ? 0 : row - 3, Math.max(0, column - 2));
  target.getRange(row, column).activate();
  open.moved();
};
