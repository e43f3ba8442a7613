import type { Cell } from "../../../definition/cells";
import type { Sheet, SheetCell } from "../book";
import type { Calculated } from "../calculate";
import { type Block, isIn, sayBlock, sayPlace } from "../place";
import type { Spelling } from "../spelling";
import { storedFormula } from "../stored-formula";
import type { OpenedWorkbook } from "./open-workbook";
import { addMetadata, dropCalculationOrder } from "./package-edits";
import { type Cells, patchSheet, type Wanted } from "./sheet-patch";
import type { Entry } from "./zip";
import { pack as packEntry, writeEntries } from "./zip-write";

export interface Patched {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** How many cells hold another value than before. */
  readonly changed: number;
}

/**
 * The workbook with the values that a calculation gave, and nothing else changed: parts without a changed cell keep their bytes, and in
 * a changed sheet only the values of cells differ. Formulas that were kept, and those that met a defect, keep their values. A formula of
 * ours that stood there as plain text, which a spreadsheet never binds, is written anew as one that it does.
 */
export const patchWorkbook = (opened: OpenedWorkbook, calculated: Calculated, spelling: Spelling): Patched => {
  const { book, pack, sheetParts, dynamicMarks } = opened;
  const left = new Set([...calculated.kept, ...calculated.defects].map(({ place }) => sayPlace(place)));
  // Where a workbook has metadata of other kinds only, a formula cannot be marked without writing that part anew: it stays as it is.
  const [known] = dynamicMarks;
  const mark = known ?? (pack.has("xl/metadata.xml") ? undefined : 1);
  const changes = new Map<string, string>();
  let changed = 0;
  let anew = 0;
  book.sheets.forEach((sheet, place) => {
    const part = sheetParts[place] as string;
    const wanted = new Map<number, Map<number, Wanted>>();
    const spills = new Map(calculated.spillsOn(sheet.name).map((block) => [`${block.row} ${block.column}`, block]));
    for (const cell of sheet.cells) {
      if (cell.formula === undefined || left.has(sayPlace({ sheet: sheet.name, ...cell }))) continue;
      const isPlain = cell.stored === "single" && mark !== undefined && spelling.isOurs(cell.formula);
      const block = spills.get(`${cell.row} ${cell.column}`) ?? {
        row: cell.row,
        column: cell.column,
        rows: 1,
        columns: 1,
      };
      wantBlock(wanted, sheet, cell, block, calculated);
      const ref = sayBlock(block);
      const value = calculated.valueAt({ sheet: sheet.name, row: cell.row, column: cell.column });
      if (isPlain) anew += 1;
      const text = isPlain ? { anew: { text: storedFormula(cell.formula, spelling), mark: String(mark) } } : {};
      const isDynamic = cell.spill !== undefined && cell.stored === undefined;
      put(wanted, cell.row, cell.column, { value, ...((isPlain || isDynamic) && { formula: { ref, ...text } }) });
    }
    if (wanted.size === 0) return;
    const before = pack.text(part);
    const patched = patchSheet(before, part, wanted, valuesOf(sheet));
    changed += patched.changed;
    if (patched.xml !== before) changes.set(part, patched.xml);
  });
  const edited =
    anew > 0 ? dropCalculationOrder(opened, known === undefined ? addMetadata(opened, changes) : changes) : changes;
  return { bytes: changed + anew === 0 ? writeEntries(pack.entries) : withChanges(pack.entries, edited), changed };
};

const put = (wanted: Map<number, Map<number, Wanted>>, row: number, column: number, want: Wanted): void => {
  const cells = wanted.get(row);
  if (cells) cells.set(column, want);
  else wanted.set(row, new Map([[column, want]]));
};

/** What an answer fills is to hold its values; what it filled before and does not now, whatever stands there now: mostly nothing. */
const wantBlock = (
  wanted: Map<number, Map<number, Wanted>>,
  sheet: Sheet,
  cell: SheetCell,
  block: Block,
  calculated: Calculated,
): void => {
  const rows = Math.max(block.rows, cell.spill?.rows ?? 1);
  const columns = Math.max(block.columns, cell.spill?.columns ?? 1);
  for (let row = cell.row; row < cell.row + rows; row++)
    for (let column = cell.column; column < cell.column + columns; column++)
      if (isIn(block, { row, column }) || isIn({ ...cell, rows: 1, columns: 1, ...cell.spill }, { row, column }))
        put(wanted, row, column, { value: calculated.valueAt({ sheet: sheet.name, row, column }) });
};

const valuesOf = (sheet: Sheet): Cells<Cell> => {
  const values = new Map<number, Map<number, Cell>>();
  for (const { row, column, value } of sheet.cells) {
    const cells = values.get(row);
    if (cells) cells.set(column, value);
    else values.set(row, new Map([[column, value]]));
  }
  return values;
};

const withChanges = (entries: readonly Entry[], changes: ReadonlyMap<string, string>): Uint8Array<ArrayBuffer> => {
  const open = new Map(changes);
  const kept = entries.flatMap((entry) => {
    const text = open.get(entry.name);
    open.delete(entry.name);
    if (text === undefined) return [entry];
    return text === "" ? [] : [packEntry(entry.name, new TextEncoder().encode(text), entry)];
  });
  const added = [...open].map(([name, text]) => packEntry(name, new TextEncoder().encode(text)));
  return writeEntries([...kept, ...added]);
};
