import { type Cell, CellError as ErrorInCell } from "../../../definition/cells";

const hints: Record<string, string> = {
  "#SPILL!":
    "The answer needs more cells than are free: clear those to the right and below. A whole column (A:A) answers as many rows as the sheet has: name its rows instead (A2:A120).",
  "#NAME?":
    "The sheet does not know a name in this formula. Check its spelling; if the functions came after the workbook was opened, press Recalculate.",
  "#REF!": "The formula points to cells that are no longer there.",
  "#BUSY!": "The cell is still being calculated. If that lasts, press Recalculate.",
  "#CALC!": "The sheet could not finish this formula. Press Recalculate to try again.",
};

/** An error that is the sheet's own and none of our refusals. */
export const CellError = ({ value }: { value: Cell }) => {
  const hint = value instanceof ErrorInCell ? hints[value.code] : undefined;
  return hint ? (
    <p class="pane-part pane-refusal">
      <span class="pane-code">{(value as ErrorInCell).code}</span> {hint}
    </p>
  ) : null;
};

/** A refusal that stands in a cell though its values can be answered now: hosts do not always ask again. */
export const OutdatedError = ({ value }: { value: Cell }) =>
  value instanceof ErrorInCell && /^#(VALUE!|N\/A)$/.test(value.code) ? (
    <p class="pane-part pane-refusal">
      <span class="pane-code">{value.code}</span> still stands in the cell, but these values can be answered: press
      Recalculate.
    </p>
  ) : null;
