import { gridEditor } from "./focus-grid";
import { goTo } from "./go-to";
import type { OpenBook } from "./open-book";

interface Deeds {
  readonly open: () => void;
  readonly save: () => void;
  /** Brings the list of words for the selected cell to the keyboard; false where there is none. */
  readonly chooseWord: () => boolean;
}

/**
 * The keys that the grid does not know of itself, or takes amiss (Shift+Tab); those it knows are left to it. Call it before the
 * grid starts: the engine, too, listens before anybody else.
 */
export const listenToKeys = (opened: () => OpenBook, { open, save, chooseWord }: Deeds): void => {
  const pageKey = ({ key, altKey, shiftKey }: KeyboardEvent, isControl: boolean): boolean => {
    if (isControl && !altKey && !shiftKey && key.toLowerCase() === "s") save();
    else if (isControl && !altKey && !shiftKey && key.toLowerCase() === "o") open();
    // Browsers keep Ctrl+Page Up and Down for their own tabs, except in a window of its own; Alt they leave.
    else if ((isControl || altKey) && /^Page(Up|Down)$/.test(key)) stepSheets(opened(), key === "PageDown" ? 1 : -1);
    else return false;
    return true;
  };

  const gridKey = ({ key, altKey, shiftKey }: KeyboardEvent, isControl: boolean): boolean => {
    const book = opened();
    const { place } = book;
    if (place && shiftKey && key === "Tab") {
      goTo(book, { ...place, column: Math.max(0, place.column - 1) });
      return true;
    }
    const sheet = book.grid.api.getActiveWorkbook()?.getActiveSheet();
    if (!place || !sheet || altKey || shiftKey) return false;
    const seen = sheet.getVisibleRange();
    const rowsSeen = Math.max(1, seen ? seen.endRow - seen.startRow - 2 : 20);
    const to = (row: number, column: number) => goTo(book, { sheet: place.sheet, row, column });
    if (key === "Home") to(isControl ? 0 : place.row, 0);
    else if (key === "End" && isControl) to(Math.max(0, sheet.getLastRow()), Math.max(0, sheet.getLastColumn()));
    else if (key === "PageDown") to(Math.min(sheet.getMaxRows() - 1, place.row + rowsSeen), place.column);
    else if (key === "PageUp") to(Math.max(0, place.row - rowsSeen), place.column);
    else return false;
    return true;
  };

  const wordKey = ({ key }: KeyboardEvent): boolean => key === "ArrowDown" && chooseWord();

  window.addEventListener(
    "keydown",
    (event) => {
      if (document.querySelector("dialog[open]")) return;
      const isControl = event.ctrlKey || event.metaKey;
      const isInGrid =
        document.activeElement === gridEditor() && !opened().grid.api.getActiveWorkbook()?.isCellEditing();
      const taken =
        pageKey(event, isControl) ||
        (isInGrid && gridKey(event, isControl)) ||
        (isInGrid && event.altKey && wordKey(event));
      if (!taken) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    { capture: true },
  );
};

const stepSheets = (book: OpenBook, step: number): void => {
  const workbook = book.grid.api.getActiveWorkbook();
  const names = workbook?.getSheets().map((sheet) => sheet.getSheetName()) ?? [];
  const here = names.indexOf(workbook?.getActiveSheet().getSheetName() ?? "");
  const next = names[here + step];
  if (next !== undefined) goTo(book, { sheet: next, row: 0, column: 0 });
};
