import type { AnyDefinition } from "../../../definition/define";
import { gridFormula } from "../../engine/grid-formula";
import type { Place } from "../../engine/place";
import { readable } from "../../engine/readable";
import { formulaAsRead } from "./formula-as-read";
import type { OpenBook } from "./open-book";
import { asText, cellTyped, sayTyped } from "./typed-value";

/** Puts what was typed into a cell: a formula, a number, a day, TRUE or FALSE, text; nothing clears it. */
export const putInto = (open: OpenBook, place: Place, typed: string, catalogue: readonly AnyDefinition[]): void => {
  const { sheet, row, column } = place;
  const range = open.grid.api.getActiveWorkbook()?.getSheetByName(sheet)?.getRange(row, column);
  if (!range) throw new Error(`There is no sheet "${sheet}".`);
  if (!typed.startsWith("=")) {
    const format = range.getNumberFormat();
    const isThere = formulaAsRead(open, place) === "" && typed === sayTyped(open.view?.valueAt(place) ?? null, format);
    if (typed === "") range.clearContent();
    else if (!isThere) range.setValue(cellTyped(typed, format));
  } else if (typed !== formulaAsRead(open, place)) {
    const formula = inEngineWords(open, place, typed, catalogue);
    if (formula === undefined) range.setValue(asText(typed));
    else range.setFormula(formula);
  }
};

/** The engine knows no tables, so their cells are put in the place of "Trials[current]"; the rest is taken as it was typed. undefined: it cannot be read. */
export const inEngineWords = (
  { asRead }: OpenBook,
  { sheet, row, column }: Place,
  typed: string,
  catalogue: readonly AnyDefinition[],
): string | undefined => {
  if (!asRead || !typed.includes("[")) return gridFormula(typed);
  const cells = [{ row, column, value: null, formula: typed }];
  const sheets = asRead.sheets.map((one) => ({ ...one, cells: one.name === sheet ? cells : [] }));
  const { book } = readable({ ...asRead, sheets }, catalogue);
  return book.sheets.find(({ name }) => name === sheet)?.cells[0]?.formula ?? typed;
};
