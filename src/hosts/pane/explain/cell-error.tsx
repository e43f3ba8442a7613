import { type Cell, CellError as ErrorInCell } from "../../../definition/cells";

const hints: Record<string, string> = {
  "#SPILL!": "The answer needs more cells than are free: clear those to the right and below.",
  "#NAME?": "The sheet does not know a name in this formula: check its spelling.",
  "#REF!": "The formula points to cells that are no longer there.",
  "#BUSY!": "The cell is still being calculated.",
  "#CALC!": "The sheet could not finish this formula.",
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
