import type { FWorksheet } from "@univerjs/sheets/facade";
import { ScrollCommand } from "@univerjs/sheets-ui";
import type { Place } from "../../engine/place";
import type { OpenBook } from "./open-book";

/** So near the top a cell is in sight without scrolling down. */
const rowsInSight = 12;
/** What the row numbers and the scroll bar take of the grid's width. */
const edgesPixels = 60;

/** Selects a cell and brings it into sight. */
export const goTo = (open: OpenBook, { sheet, row, column }: Place): void => {
  const { api } = open.grid;
  const target = open.sheetCalled(sheet);
  const book = api.getActiveWorkbook();
  if (book?.getActiveSheet().getSheetName() !== sheet) book?.setActiveSheet(target);
  const seen = target.getVisibleRange();
  const isSeen =
    seen && row >= seen.startRow && row < seen.endRow && column >= seen.startColumn && column < seen.endColumn;
  if (!isSeen) {
    const frozenRows = Math.max(0, target.getFreeze().ySplit);
    api.syncExecuteCommand(ScrollCommand.id, {
      sheetViewStartRow: row < rowsInSight ? 0 : Math.max(0, row - 3 - frozenRows),
      offsetY: 0,
      ...columnsInSight(target, column, open.width - edgesPixels),
    });
  }
  target.getRange(row, column).activate();
  open.moved();
};

/** The engine's way to say which column comes first: as many before the wanted one as have room, so that what it belongs to is seen. */
const columnsInSight = (sheet: FWorksheet, column: number, room: number) => {
  const left = (at: number): number =>
    Array.from({ length: at }, (_, i) => sheet.getColumnWidth(i)).reduce((sum, width) => sum + width, 0);
  const frozen = left(Math.max(0, sheet.getFreeze().xSplit));
  const end = left(column + 1);
  let first = column;
  while (first > 0 && end - left(first - 1) <= room - frozen) first--;
  // The engine counts from the sheet's edge also where columns are frozen.
  const hidden = Math.max(0, left(first) - frozen);
  let start = 0;
  while (left(start + 1) <= hidden) start++;
  return { sheetViewStartColumn: start, offsetX: hidden - left(start) };
};
