import type { IWorksheetData } from "@univerjs/core";
import type { Book, Sheet } from "../../engine/book";
import { keyOf, sayPlace } from "../../engine/place";
import { enclosed } from "../../engine/readable-names";
import { sheetId } from "../../engine/snapshot";
import { withValues } from "../../engine/with-values";
import { CannotKeep } from "../../engine/xlsx/cannot-keep";
import type { BookEdits } from "../../engine/xlsx/edits";
import { namedSheets, sheetFromGrid } from "./book-from-grid";
import type { GridState } from "./grid-state";
import { sheetEdits } from "./sheet-edits";

/** What was changed in the grid of the workbook that a file holds. */
interface Changed {
  readonly edits: BookEdits;
  /** The places of formulas that the grid does not calculate. */
  readonly kept: readonly string[];
  /** Sheets on which cells were moved: what points at them from outside the cells does not follow. */
  readonly moved: readonly string[];
}

/** Throws CannotKeep when the file's sheets have not kept their places. */
export const changedSince = (file: Book, state: GridState): Changed => {
  const sheets = namedSheets(state.data);
  const ids = file.sheets.map((_, place) => sheetId(place));
  const own = sheets.filter(({ id }) => ids.includes(id));
  const found = file.sheets.map(({ name }, place): IWorksheetData => {
    const sheet = own[place];
    if (!own.some(({ id }) => id === ids[place])) throw new CannotKeep(`the sheet ${name} was deleted`);
    if (!sheet || sheet.id !== ids[place]) throw new CannotKeep("its sheets are in another order");
    if (sheet.name !== name) throw new CannotKeep(`the sheet ${name} was renamed`);
    if (state.movedOn(sheet.id) === "lines")
      throw new CannotKeep(`rows or columns of the sheet ${name} were put in, taken out or moved`);
    return sheet;
  });
  if (!sameNames(state)) throw new CannotKeep("its names stand for other cells than they did");
  const shown = (name: string): Sheet =>
    state.shown?.sheets.find((sheet) => sheet.name === name) ?? { name, cells: [] };
  const changes = file.sheets.map((read, place) =>
    sheetEdits({ read, shown: shown(read.name), now: found[place] as IWorksheetData, state }),
  );
  const added = sheets.filter(({ id }) => !ids.includes(id)).map((sheet) => sheetFromGrid(state, sheet));
  return {
    edits: { sheets: changes, added: withValues({ sheets: added }, state.view).sheets },
    kept: file.sheets.flatMap((read) => notCalculated(read, shown(read.name))),
    moved: found.flatMap(({ id, name }) => (state.movedOn(id) === "cells" ? [name] : [])),
  };
};

/** Formulas that are values in the grid. */
const notCalculated = ({ name, cells }: Sheet, shown: Sheet): string[] => {
  const formulas = new Set(shown.cells.filter(({ formula }) => formula !== undefined).map(keyOf));
  return cells.flatMap(({ row, column, formula }) =>
    formula === undefined || formulas.has(keyOf({ row, column })) ? [] : sayPlace({ sheet: name, row, column }),
  );
};

const sameNames = ({ shown, names }: GridState): boolean => {
  const said = (list: typeof names) => list.map(({ name, formula }) => `${name} ${formula.replace(/^=/, "")}`).sort();
  const before = (shown?.names ?? []).map(({ name, formula }) => ({ name, formula: enclosed(formula) }));
  return JSON.stringify(said(before)) === JSON.stringify(said(names));
};
