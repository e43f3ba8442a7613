import type { Cell } from "../../../definition/cells";
import type { Sheet, SheetCell } from "../book";
import type { Calculated } from "../calculate";
import type { GridView } from "../grid-view";
import { type Block, isIn, keyOf, sayBlock, sayPlace } from "../place";
import type { Spelling } from "../spelling";
import { isBound, storedFormula } from "../stored-formula";
import { type Cells, putCell } from "./cell-splices";
import type { OpenedWorkbook } from "./open-workbook";
import { dropCalculationOrder, dynamicMark } from "./package-edits";
import { patchSheet, type Wanted } from "./sheet-patch";
import type { Entry } from "./zip";
import { pack as packEntry, writeEntries } from "./zip-write";

type Answers = Pick<GridView, "valueAt" | "spillsOn">;

export interface Patched {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** How many cells hold another value than before. */
  readonly changed: number;
}

/** Formulas that are not to be calculated values, by their places as `sayPlace` tells them. */
interface Apart {
  /** They stay, with the values that they have. */
  readonly left: ReadonlySet<string>;
  /** Their values alone stand there. */
  readonly gone?: ReadonlySet<string>;
}

/**
 * The workbook with the values that a calculation gave, and nothing else changed: parts without a changed cell keep their bytes, and in
 * a changed sheet only the values of cells differ. A formula of ours that stood there as plain text, which a spreadsheet never binds, is
 * written anew as one that it does.
 */
export const patchWorkbook = (
  opened: OpenedWorkbook,
  answers: Answers,
  { left, gone = new Set() }: Apart,
  spelling: Spelling,
): Patched => {
  const { book, pack, sheetParts } = opened;
  const needsMark =
    gone.size === 0 &&
    book.sheets.some(({ cells }) =>
      cells.some(({ formula, stored }) => stored === "single" && formula !== undefined && spelling.isOurs(formula)),
    );
  const dynamic = needsMark ? dynamicMark(opened) : undefined;
  const changes = new Map<string, string>();
  let [changed, marked] = [0, 0];
  book.sheets.forEach((sheet, place) => {
    const part = sheetParts[place] as string;
    const wanted = new Map<number, Map<number, Wanted>>();
    const spills = new Map(answers.spillsOn(sheet.name).map((block) => [keyOf(block), block]));
    const isLeft = (cell: SheetCell) => left.has(sayPlace({ sheet: sheet.name, ...cell }));
    // One of these that stays as it is needs the cell in which they are written out.
    const together = new Set(
      sheet.cells.flatMap((cell) => (cell.shared !== undefined && isLeft(cell) ? cell.shared : [])),
    );
    for (const cell of sheet.cells) {
      if (cell.formula === undefined || isLeft(cell)) continue;
      const { row, column, formula, stored, shared } = cell;
      const isGone = gone.has(sayPlace({ sheet: sheet.name, row, column }));
      const canMark = stored !== "single" || (dynamic !== undefined && !(shared !== undefined && together.has(shared)));
      const isOurs = !isGone && canMark && spelling.isOurs(formula);
      const one = { row, column, rows: 1, columns: 1 };
      const block = stored === "single" && !isOurs && !isGone ? one : (spills.get(keyOf(cell)) ?? one);
      wantBlock(wanted, sheet, cell, block, answers);
      const ref = stored === "fixed" ? undefined : sayBlock(block);
      const ours = isOurs ? { text: storedFormula(formula, spelling), mark: dynamic?.mark } : undefined;
      const value = answers.valueAt({ sheet: sheet.name, row, column });
      const wish = isGone ? { gone: true } : (ours || stored === undefined) && { ref, ours };
      putCell(wanted, cell, { value, ...(wish && { formula: wish }) });
    }
    if (gone.size > 0)
      for (const cell of sheet.cells)
        if (cell.formula !== undefined && cell.shared !== undefined && isLeft(cell))
          putCell(wanted, cell, { value: cell.value, kept: storedFormula(cell.formula, spelling) });
    if (wanted.size === 0) return;
    const before = pack.text(part);
    const patched = patchSheet(before, part, wanted, valuesOf(sheet), (text) => isBound(text, spelling));
    changed += patched.changed;
    marked += patched.marked;
    if (patched.xml !== before) changes.set(part, patched.xml);
  });
  if (marked > 0 && dynamic) for (const [part, text] of dynamic.changes) changes.set(part, text);
  // Nor may the list of the order of calculation name a cell that has no formula any more.
  const edited = marked + gone.size > 0 ? dropCalculationOrder(opened, changes) : changes;
  return { bytes: edited.size === 0 ? writeEntries(pack.entries) : withChanges(pack.entries, edited), changed };
};

/** The places of formulas that keep their values, because they were not calculated or met a defect. */
export const leftFormulas = ({ kept, defects }: Pick<Calculated, "kept" | "defects">): ReadonlySet<string> =>
  new Set([...kept, ...defects].map(({ place }) => sayPlace(place)));

/** What an answer fills is to hold its values; what it filled before and does not now, whatever stands there now: mostly nothing. */
const wantBlock = (
  wanted: Map<number, Map<number, Wanted>>,
  sheet: Sheet,
  cell: SheetCell,
  block: Block,
  answers: Answers,
): void => {
  const rows = Math.max(block.rows, cell.spill?.rows ?? 1);
  const columns = Math.max(block.columns, cell.spill?.columns ?? 1);
  for (let row = cell.row; row < cell.row + rows; row++)
    for (let column = cell.column; column < cell.column + columns; column++)
      if (isIn(block, { row, column }) || isIn({ ...cell, rows: 1, columns: 1, ...cell.spill }, { row, column }))
        putCell(wanted, { row, column }, { value: answers.valueAt({ sheet: sheet.name, row, column }) });
};

const valuesOf = (sheet: Sheet): Cells<Cell> => {
  const values = new Map<number, Map<number, Cell>>();
  for (const cell of sheet.cells) putCell(values, cell, cell.value);
  return values;
};

/** A package with other parts in place of its own or beside them; a part whose text is "" is left out. */
export const withChanges = (
  entries: readonly Entry[],
  changes: ReadonlyMap<string, string>,
): Uint8Array<ArrayBuffer> => {
  // The names of parts are equal in any case.
  const open = new Map([...changes].map(([name, text]) => [name.toLowerCase(), { name, text }]));
  const kept = entries.flatMap((entry) => {
    const change = open.get(entry.name.toLowerCase());
    open.delete(entry.name.toLowerCase());
    if (change === undefined) return [entry];
    return change.text === "" ? [] : [packEntry(entry.name, new TextEncoder().encode(change.text), entry)];
  });
  const added = [...open.values()].map(({ name, text }) => packEntry(name, new TextEncoder().encode(text)));
  return writeEntries([...kept, ...added]);
};
