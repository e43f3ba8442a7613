import { type Cell, CellError } from "../../../definition/cells";
import { type Cells, cellSplices } from "./cell-splices";
import { cellWith, type FormulaChange, fileErrors, newCell, unshared, valueText } from "./cell-text";
import type { WrittenCell } from "./sheet-walk";
import { spliced } from "./splice";

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
  let [changed, marked] = [0, 0];
  const splices = cellSplices(
    xml,
    part,
    { wanted, rows: [] },
    {
      fresh: ({ row, column }, { value }) => {
        if (valueText(value).element === "") return "";
        changed += 1;
        return newCell(row, column, value);
      },
      instead: (written, want) => {
        if (!want) return undefined;
        const { row, column, formula } = written;
        if (want.kept !== undefined)
          return formula?.text === "" ? unshared(xml, written, formula, want.kept) : undefined;
        const change = changeOf(written, want.formula, isBound);
        const sameValue =
          isSame(want.value, has.get(row)?.get(column) ?? null) && !saysAnotherError(written, want.value);
        if (sameValue && !change) return undefined;
        if (!sameValue) changed += 1;
        if (change?.anew?.mark !== undefined) marked += 1;
        return cellWith(xml, written, want.value, change);
      },
      rowSays: () => undefined,
      outside: {},
    },
  );
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
