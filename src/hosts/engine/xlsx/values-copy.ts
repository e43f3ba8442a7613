import type { Calculated } from "../calculate";
import { formulasOfOurs } from "../formulas-of-ours";
import type { Spelling } from "../spelling";
import type { OpenedWorkbook } from "./open-workbook";
import { leftFormulas, type Patched, patchWorkbook } from "./patch-workbook";
import { columnsFilledByOurs, type FilledColumn } from "./table-formulas";

/** A workbook for people without our functions. */
export interface ValuesCopy extends Patched {
  /** How many formulas their values stand for. */
  readonly shown: number;
  /** Columns of tables whose formulas of ours stay in the tables themselves, for new rows. */
  readonly filled: readonly FilledColumn[];
}

/**
 * The workbook as `patchWorkbook` makes it, but where a formula needs functions of ours its value stands without it, in every cell that
 * its answer fills. All other formulas stay. One of ours that could not be calculated stays too, with the value it had.
 */
export const valuesCopy = (opened: OpenedWorkbook, calculated: Calculated, spelling: Spelling): ValuesCopy => {
  const left = leftFormulas(calculated);
  const gone = formulasOfOurs(opened.book, spelling, left);
  const filled = columnsFilledByOurs(opened, spelling);
  return { ...patchWorkbook(opened, calculated, { left, gone }, spelling), shown: gone.size, filled };
};
