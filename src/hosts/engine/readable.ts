import { CellError } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import type { Book, DefinedName, SheetCell } from "./book";
import { engineFormula } from "./engine-formula";
import { isIn, type Place, sayPlace } from "./place";
import { meaningOf, movesWithCell, readableNames } from "./readable-names";
import { Spelling } from "./spelling";
import { hasEngineFunction } from "./univer-internals";

/** A formula that is not calculated: its cell keeps the value it had. */
export interface Kept {
  readonly place: Place;
  readonly formula: string;
  /** One sentence. */
  readonly why: string;
}

/** A workbook in the engine's words, and what had to be left as it was. Its names are for formulas that are typed later. */
interface Readable {
  readonly book: Book;
  readonly kept: readonly Kept[];
}

/**
 * A workbook as the engine can calculate it. Old spilled values beside a formula are dropped, for they would stand in the way of the
 * new ones; a formula without engine words becomes its last value. `circles` and the like are handed in as `alsoKeep`, by place.
 */
export const readable = (
  book: Book,
  catalogue: readonly AnyDefinition[],
  alsoKeep: ReadonlyMap<string, string> = new Map(),
): Readable => {
  const spelling = new Spelling(catalogue);
  const hasFunction = (name: string) => hasEngineFunction(name) || spelling.typed(name) !== undefined;
  const names = readableNames(book, hasFunction);
  const known = { hasFunction, meaning: meaningOf(names) };
  const kept: Kept[] = [];
  const sheets = book.sheets.map((sheet) => {
    const answers = sheet.cells.filter(({ formula, spill }) => formula !== undefined && spill);
    const keptPlaces = new Set<SheetCell>();
    const cells = sheet.cells.map((cell): SheetCell => {
      if (cell.formula === undefined) return cell;
      const place = { sheet: sheet.name, row: cell.row, column: cell.column };
      const { formula } = cell;
      const why = alsoKeep.get(sayPlace(place));
      const words = why === undefined ? engineFormula({ ...cell, formula }, place, book, known) : { why };
      if ("formula" in words) return { ...cell, formula: words.formula };
      kept.push({ place, formula, why: words.why });
      keptPlaces.add(cell);
      return { ...cell, formula: undefined, value: cell.value ?? new CellError("#NAME?") };
    });
    const stale = blocksOf(answers.filter((cell) => !keptPlaces.has(cell)));
    return { ...sheet, cells: cells.filter((cell) => cell.formula !== undefined || !stale(cell)) };
  });
  return {
    book: { ...book, sheets, names: names.filter(isForAll(hasFunction)) },
    kept,
  };
};

/** The engine knows names of the whole workbook alone, and takes what they stand for as it is written. */
const isForAll = (hasFunction: (name: string) => boolean) => (name: DefinedName) =>
  name.sheet === undefined && !hasFunction(name.name) && !movesWithCell(name.formula);

/** Tells whether a place lies in a block that starts elsewhere, by row: a sheet may hold very many answers. */
const blocksOf = (answers: readonly SheetCell[]): ((place: SheetCell) => boolean) => {
  const byRow = new Map<number, SheetCell[]>();
  for (const answer of answers)
    for (let row = answer.row; row < answer.row + (answer.spill?.rows ?? 1); row++) {
      const own = byRow.get(row);
      if (own) own.push(answer);
      else byRow.set(row, [answer]);
    }
  return (place) =>
    (byRow.get(place.row) ?? []).some((answer) => {
      const block = { row: answer.row, column: answer.column, rows: 1, columns: 1, ...answer.spill };
      return (place.row !== answer.row || place.column !== answer.column) && isIn(block, place);
    });
};
