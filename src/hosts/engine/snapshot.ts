import {
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import { type Cell, CellError } from "../../definition/cells";
import type { Book, Sheet, SheetCell, Style } from "./book";
import { NAMES_RESOURCE, namesResource } from "./names";
import { MOST_COLUMNS, MOST_ROWS } from "./place";

/** How much larger than its cells a sheet is made, so that answers have room. */
export interface Room {
  readonly rows: number;
  readonly columns: number;
}

export const ROOM: Room = { rows: 200, columns: 10 };

let made = 0;

/**
 * A workbook as the grid engine loads it (`createWorkbook`). Its id is new each time: two workbooks of one id in one process give
 * each other's values. Formulas must be in the engine's own words: see `readable`.
 */
export const snapshotOf = (book: Book, room = ROOM): Partial<IWorkbookData> & { id: string } => {
  made += 1;
  const id = `book-${made}-${Date.now().toString(36)}`;
  const sheets = book.sheets.map((sheet, place) => sheetSnapshot(sheet, sheetId(place), room));
  return {
    id,
    name: "Workbook",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: sheets.map((sheet) => sheet.id as string),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: [{ name: NAMES_RESOURCE, data: namesResource(book, id) }],
  };
};

/** What the grid calls the sheets that it was opened with, by their places from 0. */
export const sheetId = (place: number): string => `sheet-${place + 1}`;

/** One sheet as the grid engine takes it in. */
export const sheetSnapshot = (sheet: Sheet, id: string, room: Room): Partial<IWorksheetData> => {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let rows = 0;
  let columns = 0;
  for (const cell of sheet.cells) {
    cellData[cell.row] ??= {};
    (cellData[cell.row] as Record<number, ICellData>)[cell.column] = cellSnapshot(cell);
    rows = Math.max(rows, cell.row + (cell.spill?.rows ?? 1));
    columns = Math.max(columns, cell.column + (cell.spill?.columns ?? 1));
  }
  const { rows: ySplit = 0, columns: xSplit = 0 } = sheet.frozen ?? {};
  return {
    id,
    name: sheet.name,
    rowCount: Math.min(MOST_ROWS, rows + room.rows),
    columnCount: Math.min(MOST_COLUMNS, columns + room.columns),
    cellData,
    columnData: Object.fromEntries([...(sheet.widths ?? [])].map(([column, width]) => [column, { w: pixels(width) }])),
    freeze: { xSplit, ySplit, startRow: ySplit || -1, startColumn: xSplit || -1 },
  };
};

/** A column of the default font's width `characters`, as spreadsheets draw it. */
export const pixels = (characters: number): number => Math.round(characters * 7 + 5);

/** One cell as the grid engine takes it in. */
export const cellSnapshot = ({ value, formula, style }: SheetCell): ICellData => {
  const look = style && styleSnapshot(style, value);
  if (formula !== undefined) return { f: formula, ...(look && { s: look }) };
  return { ...engineCell(value), ...(look && { s: look }) };
};

const engineCell = (value: Cell): ICellData => {
  if (value === null) return {};
  if (value instanceof CellError) return { v: value.code, t: CellValueType.STRING };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: CellValueType.STRING };
};

const styleSnapshot = ({ format, bold, italic, fill, color, wrap }: Style, value: Cell): IStyleData => ({
  // The engine reads a number under the text format as text, which a spreadsheet does not.
  ...(format && !(format === "@" && typeof value === "number") && { n: { pattern: format } }),
  ...(bold && { bl: 1 }),
  ...(italic && { it: 1 }),
  ...(fill && { bg: { rgb: `#${fill}` } }),
  ...(color && { cl: { rgb: `#${color}` } }),
  ...(wrap && { tb: 3 }),
});
