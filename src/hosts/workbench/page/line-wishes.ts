import type { IColumnData, IRowData, IWorksheetData } from "@univerjs/core";
import type { Sheet } from "../../engine/book";
import { pixels } from "../../engine/snapshot";
import type { ColumnWish } from "../../engine/xlsx/column-splices";
import type { RowWish } from "../../engine/xlsx/edits";
import { charactersOf } from "./book-from-grid";

/** Columns that somebody made wider, narrower or hid since the sheet was shown. */
export const columnWishes = (
  shown: Sheet,
  { columnData, defaultColumnWidth }: IWorksheetData,
): [number, ColumnWish][] =>
  Object.entries((columnData ?? {}) as Record<string, Partial<IColumnData> | null>).flatMap(
    ([key, data]): [number, ColumnWish][] => {
      const [column, { w, hd } = {}] = [Number(key), data ?? {}];
      const width = shown.widths?.get(column);
      const before = width === undefined ? defaultColumnWidth : pixels(width);
      const wish = {
        ...(w !== undefined && w !== before && { width: charactersOf(w) }),
        ...(hd === 1 && { hidden: true as const }),
      };
      return Object.keys(wish).length > 0 ? [[column, wish]] : [];
    },
  );

/** Only heights that somebody chose: the page makes rows higher itself where texts wrap. */
export const rowWishes = ({ rowData }: IWorksheetData): [number, RowWish][] =>
  Object.entries((rowData ?? {}) as Record<string, Partial<IRowData> | null>).flatMap(
    ([row, data]): [number, RowWish][] => {
      const { h, ia, hd } = data ?? {};
      const wish = {
        ...(ia === 0 && h !== undefined && { height: h * POINTS }),
        ...(hd === 1 && { hidden: true as const }),
      };
      return Object.keys(wish).length > 0 ? [[Number(row), wish]] : [];
    },
  );

/** Of a pixel: 96 pixels and 72 points to the inch. */
const POINTS = 0.75;
