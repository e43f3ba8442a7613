import type { Place } from "../../engine/place";
import type { OpenBook } from "./open-book";

/** Puts what was typed into a cell, as the grid would take it: a formula, a number, TRUE or FALSE, text; nothing clears it. */
export const putInto = ({ grid }: OpenBook, { sheet, row, column }: Place, typed: string): void => {
  const range = grid.api.getActiveWorkbook()?.getSheetByName(sheet)?.getRange(row, column);
  if (!range) throw new Error(`There is no sheet "${sheet}".`);
  if (typed.startsWith("=")) range.setFormula(typed);
  else if (typed === "") range.clearContent();
  else range.setValue(valueTyped(typed));
};

const valueTyped = (typed: string): string | number | boolean => {
  if (/^(true|false)$/i.test(typed)) return /^true$/i.test(typed);
  const number = Number(typed);
  return typed.trim() !== "" && Number.isFinite(number) ? number : typed;
};
