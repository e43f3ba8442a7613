import { type Cell, CellError } from "../../../definition/cells";
import {
  cellWith,
  type FormulaChange,
  fileErrors,
  keptTag,
  newCell,
  tag,
  unsharedFormula,
  valueText,
} from "./cell-text";
import { type WrittenCell, walkSheet } from "./sheet-walk";
import { type Splice, spliced } from "./splice";

/** What a cell is to hold. */
export interface Wanted {
  readonly value: Cell;
  readonly formula?: {
    readonly ref?: string | undefined;
    /** A formula with functions of ours: how it is to be written where the file spells it so that no spreadsheet finds them. */
    readonly ours?: { readonly text: string; readonly mark: number | undefined } | undefined;
    /** The value is to stand there without its formula. */
    readonly gone?: boolean;
  };
  /** A formula to be kept as the cell has it, value and all, written out here when the file only points to another cell for its words. */
  readonly kept?: string;
}

/** Cells by row and column. */
export type Cells<T> = ReadonlyMap<number, ReadonlyMap<number, T>>;

/**
 * A sheet's part with other values in some cells; every other character stays. `has` is what the cells hold now: a cell that already
 * holds what is wanted is left alone to the letter. `isBound` tells whether a spreadsheet finds our functions in a formula as it stands
 * there. `marked` counts the formulas that became dynamic arrays.
 */
export const patchSheet = (
  xml: string,
  part: string,
  wanted: Cells<Wanted>,
  has: Cells<Cell>,
  isBound: (formula: string) => boolean,
): { xml: string; changed: number; marked: number } => {
  const splices: Splice[] = [];
  let [changed, marked] = [0, 0];
  const rows = [...wanted.keys()].sort((a, b) => a - b);
  let next = 0;
  let seen = new Set<number>();
  let added = false;

  const add = (row: number, columns: readonly number[], at: number): string => {
    const cells = columns.flatMap((column) => {
      const value = wanted.get(row)?.get(column)?.value ?? null;
      return valueText(value).element === "" ? [] : [newCell(row, column, value)];
    });
    changed += cells.length;
    if (cells.length > 0 && at >= 0) splices.push({ from: at, to: at, put: cells.join("") });
    return cells.join("");
  };
  const missing = (row: number, before = Infinity): number[] =>
    [...(wanted.get(row)?.keys() ?? [])].filter((column) => !seen.has(column) && column < before).sort((a, b) => a - b);
  const take = (columns: readonly number[]) => {
    for (const column of columns) seen.add(column);
    return columns;
  };
  /** Rows that the file does not have, before a place. */
  const addRows = (before: number, at: number): void => {
    for (; next < rows.length && (rows[next] as number) < before; next++) {
      const row = rows[next] as number;
      seen = new Set();
      const cells = add(row, missing(row), -1);
      if (cells) splices.push({ from: at, to: at, put: `${tag("row", { r: String(row + 1) })}${cells}</row>` });
    }
  };

  walkSheet(xml, part, {
    rowStart: () => {
      seen = new Set();
      added = false;
    },
    cell: (written) => {
      const { row, column, open, end } = written;
      const before = take(missing(row, column));
      if (add(row, before, open.from)) added = true;
      seen.add(column);
      const want = wanted.get(row)?.get(column);
      if (!want) return;
      if (want.kept !== undefined) {
        const put = written.formula?.text === "" ? unsharedFormula(written.formula, want.kept) : undefined;
        if (put !== undefined && written.formula) splices.push({ ...written.formula, put });
        return;
      }
      const change = changeOf(written, want.formula, isBound);
      const sameValue = isSame(want.value, has.get(row)?.get(column) ?? null) && !saysAnotherError(written, want.value);
      if (sameValue && !change) return;
      if (!sameValue) changed += 1;
      if (change?.anew?.mark !== undefined) marked += 1;
      splices.push({ from: open.from, to: end, put: cellWith(xml, written, want.value, change) });
    },
    rowEnd: ({ row, open, closeFrom, end }) => {
      const rest = take(missing(row));
      if (open.isSelfClosing) {
        const cells = add(row, rest, -1);
        const { spans: _, ...attributes } = open.attributes;
        if (cells) splices.push({ from: open.from, to: end, put: `${keptTag("row", attributes)}${cells}</row>` });
      } else {
        if (add(row, rest, closeFrom)) added = true;
        const { spans, ...attributes } = open.attributes;
        // `spans` says which columns a row has; without it a reader looks for itself.
        if (added && spans) splices.push({ from: open.from, to: open.to, put: keptTag("row", attributes) });
      }
      addRows(row, open.from);
      if (rows[next] === row) next += 1;
    },
    elementEnd: (name, from) => {
      if (name === "sheetData") addRows(Infinity, from);
    },
  });
  return { xml: spliced(xml, splices), changed, marked };
};

type Change = FormulaChange | undefined;

const changeOf = ({ formula }: WrittenCell, want: Wanted["formula"], isBound: (formula: string) => boolean): Change => {
  if (!formula || !want) return undefined;
  if (want.gone) return { gone: true };
  const { attributes, text } = formula;
  const ref = want.ref ?? attributes.ref;
  const isArray = attributes.t === "array";
  if (want.ours && !isArray) return { ref, anew: want.ours };
  if (want.ours && !isBound(text)) return { ref, anew: { text: want.ours.text } };
  return attributes.ref === ref ? undefined : { ref };
};

/** An error that a file cannot spell is #VALUE! there and named by `vm`; that name must not outlive it. */
const saysAnotherError = ({ open }: WrittenCell, value: Cell): boolean =>
  open.attributes.vm !== undefined && value instanceof CellError && fileErrors.has(value.code);

const isSame = (a: Cell, b: Cell): boolean =>
  a instanceof CellError
    ? b instanceof CellError && valueText(a).element === valueText(b).element
    : Object.is(a, b) || (a === 0 && b === 0);
