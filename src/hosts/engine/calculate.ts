import { CellError } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import type { Book } from "./book";
import { BREAKDOWN } from "./breakdowns";
import { circularCells } from "./circles";
import { engineComplaints, type GridView } from "./grid-view";
import { keyOf, type Place, sayPlace } from "./place";
import { type Kept, readable } from "./readable";
import { type Run, type RunOptions, runEngine } from "./run";
import { ROOM } from "./snapshot";
import { Spelling } from "./spelling";

/** A workbook after calculation. */
export interface Calculated extends Run {
  /** Formulas that were not calculated; what reads them was calculated with the values they had. */
  readonly kept: readonly Kept[];
}

/** Each round leaves more formulas out or makes more room, so few are needed. */
const MOST_ROUNDS = 6;

/**
 * Calculates every formula of a workbook, without a grid to show it.
 * A formula that the engine cannot calculate as a spreadsheet would is kept: see `kept`.
 */
export const calculate = async (
  book: Book,
  catalogue: readonly AnyDefinition[],
  options: Omit<RunOptions, "room"> = {},
): Promise<Calculated> => {
  const spelling = new Spelling(catalogue);
  const alsoKeep = new Map<string, string>();
  let room = ROOM;
  for (let round = 1; ; round++) {
    const { book: engineBook, kept } = readable(book, catalogue, alsoKeep);
    // The formulas need no names any more.
    const run = await runEngine({ ...engineBook, names: [] }, catalogue, { ...options, room });
    const faults = faultsIn(book, run, spelling, engineBook);
    const fresh = faults.filter(([place]) => !alsoKeep.has(place));
    const lacking = run.lacking();
    if (round === MOST_ROUNDS || (fresh.length === 0 && !lacking)) return { ...run, kept };
    for (const [place, why] of fresh) alsoKeep.set(place, why);
    if (lacking) room = { rows: room.rows + lacking.rows, columns: room.columns + lacking.columns };
    run.close();
  }
};

type Fault = readonly [place: string, why: string];

/** Formulas of a calculated workbook whose answers mean nothing, by place, each with a sentence that says why. */
export const faultsIn = (book: Book, view: GridView, spelling: Spelling, inEngineWords = book): Fault[] => {
  const found = circles(inEngineWords, view);
  return view.isCircular() ? found : [...found, ...faultsOf(book, view, spelling)];
};

/** The engine says that there is a circle, not where; and of one over INDIRECT or OFFSET it may say nothing. */
const circles = (book: Book, view: GridView): Fault[] => {
  const reached = view.reached();
  if (!view.isCircular() && reached.size === 0) return [];
  const found = circularCells(book, reached);
  if (found.length > 0 || !view.isCircular()) return found.map((place) => [place, "It leads back to itself."]);
  // Not over references, so over cells that answers fill: one of these closes the circle. Else it may be any formula.
  const spills = book.sheets.flatMap(({ name: sheet }) => view.spillsOn(sheet).map((block) => ({ sheet, ...block })));
  const places = spills.length > 0 ? spills : formulaPlaces(book);
  return places.map((place): Fault => [sayPlace(place), "It may lead back to itself."]);
};

const formulaPlaces = (book: Book): Place[] =>
  book.sheets.flatMap(({ name: sheet, cells }) =>
    cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [{ sheet, row, column }])),
  );

/** Answers that a spreadsheet would not give: several cells for a formula that is stored for one, the engine's own complaints. */
const faultsOf = (book: Book, view: GridView, spelling: Spelling): Fault[] =>
  book.sheets.flatMap((sheet) => {
    const anchors = new Set(view.spillsOn(sheet.name).map(keyOf));
    return sheet.cells.flatMap(({ row, column, formula, stored }): Fault[] => {
      if (formula === undefined) return [];
      const place = { sheet: sheet.name, row, column };
      const value = view.valueAt(place);
      if (value instanceof CellError && (engineComplaints.includes(value.code) || view.messageAt(place) === BREAKDOWN))
        return [[sayPlace(place), "The engine cannot calculate it."]];
      if (stored === "single" && anchors.has(keyOf(place)) && !spelling.isOurs(formula))
        return [[sayPlace(place), "Its answer fills several cells, but the file keeps it for one."]];
      return [];
    });
  });
