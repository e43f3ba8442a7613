import type { ICellData } from "@univerjs/core";
import type { AnyDefinition } from "../../../definition/define";
import type { OpenBook } from "./open-book";
import { inEngineWords } from "./put-into";
import { asText, cellTyped } from "./typed-value";

/** Puts rows of another program at the selected cell, in one step that undo takes back. The cells keep their looks. */
export const pasteInto = (
  open: OpenBook,
  rows: readonly (readonly string[])[],
  catalogue: readonly AnyDefinition[],
): void => {
  const { place } = open;
  const sheet = place && open.grid.api.getActiveWorkbook()?.getSheetByName(place.sheet);
  const chosen = sheet?.getActiveRange();
  if (!place || !sheet || !chosen) return;
  const isOne = rows.length === 1 && rows[0]?.length === 1;
  // One value fills all that is selected.
  const height = isOne ? chosen.getHeight() : rows.length;
  const width = isOne ? chosen.getWidth() : Math.max(...rows.map((row) => row.length));
  const { row, column } = place;
  if (row + height > sheet.getMaxRows()) sheet.setRowCount(row + height);
  if (column + width > sheet.getMaxColumns()) sheet.setColumnCount(column + width);
  const range = sheet.getRange(row, column, height, width);
  const formats = range.getNumberFormats();
  const cells = Array.from({ length: height }, (_, r) =>
    Array.from({ length: width }, (_, c): ICellData => {
      const typed = (isOne ? rows[0]?.[0] : rows[r]?.[c]) ?? "";
      if (!typed.startsWith("=")) return cellTyped(typed, formats[r]?.[c] || "");
      const at = { sheet: place.sheet, row: row + r, column: column + c };
      const f = inEngineWords(open, at, typed, catalogue);
      return f === undefined ? asText(typed) : { f, v: null, p: null };
    }),
  );
  range.setValues(cells);
  range.activate();
};
