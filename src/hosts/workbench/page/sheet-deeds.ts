import type { OpenBook } from "./open-book";

export const renameSheet = (book: OpenBook, sheet: string, name: string): void => {
  book.sheetCalled(sheet).setName(name);
  book.moved();
};

/** Deletes a sheet, once the one beside it has been brought into sight: the engine breaks off the deletion of the one in sight. */
export const deleteSheet = (book: OpenBook, name: string): void => {
  const workbook = book.grid.api.getActiveWorkbook();
  const sheets = workbook?.getSheets() ?? [];
  const at = sheets.findIndex((sheet) => sheet.getSheetName() === name);
  const neighbour = sheets[at + 1] ?? sheets[at - 1];
  if (!workbook || !neighbour) throw new Error("A workbook keeps one sheet at least.");
  workbook.setActiveSheet(neighbour);
  if (!workbook.deleteSheet(book.sheetCalled(name))) throw new Error(`The sheet ${name} could not be deleted.`);
  book.moved();
};

/** How many cells of a sheet hold something; what an answer spills into is not counted. */
export const filledCells = (book: OpenBook, name: string): number => {
  let filled = 0;
  book
    .sheetCalled(name)
    .getSheet()
    .getCellMatrix()
    .forValue((_row, _column, cell) => {
      if (cell && (cell.f || cell.si || (cell.v !== undefined && cell.v !== null && cell.v !== ""))) filled++;
    });
  return filled;
};
