import type { AnyDefinition } from "../../../definition/define";
import type { Place } from "../../engine/place";
import { readable } from "../../engine/readable";
import { formulaAsRead } from "./formula-as-read";
import type { OpenBook } from "./open-book";

/** Puts what was typed into a cell, as the grid would take it: a formula, a number, TRUE or FALSE, text; nothing clears it. */
export const putInto = (open: OpenBook, place: Place, typed: string, catalogue: readonly AnyDefinition[]): void => {
  const { sheet, row, column } = place;
  const range = open.grid.api.getActiveWorkbook()?.getSheetByName(sheet)?.getRange(row, column);
  if (!range) throw new Error(`There is no sheet "${sheet}".`);
  if (!typed.startsWith("=")) {
    if (typed === "") range.clearContent();
    else range.setValue(valueTyped(typed));
  } else if (typed !== formulaAsRead(open, place)) range.setFormula(inEngineWords(open, place, typed, catalogue));
};

/** The engine knows no tables, so their cells are put in the place of "Trials[current]"; the rest is taken as it was typed. */
const inEngineWords = (
  { asRead }: OpenBook,
  { sheet, row, column }: Place,
  typed: string,
  catalogue: readonly AnyDefinition[],
): string => {
  if (!asRead || !typed.includes("[")) return typed;
  const cells = [{ row, column, value: null, formula: typed }];
  const sheets = asRead.sheets.map((one) => ({ ...one, cells: one.name === sheet ? cells : [] }));
  const { book } = readable({ ...asRead, sheets }, catalogue);
  return book.sheets.find(({ name }) => name === sheet)?.cells[0]?.formula ?? typed;
};

const valueTyped = (typed: string): string | number | boolean => {
  if (/^(true|false)$/i.test(typed)) return /^true$/i.test(typed);
  const number = Number(typed);
  return typed.trim() !== "" && Number.isFinite(number) ? number : typed;
};
