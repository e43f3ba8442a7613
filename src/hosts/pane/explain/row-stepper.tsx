import type { Explained } from "../../../definition/explained";

/** A column of answers is told a row at a time. */
export const RowStepper = ({ explained: { row, of }, onRow }: Props) => {
  if (of <= 1) return null;
  return (
    <div class="pane-rows">
      <button type="button" class="pane-step-button" disabled={row === 0} onClick={() => onRow(row - 1)}>
        Row before
      </button>
      <span class="pane-rows-text">
        Row {row + 1} of {of}
      </span>
      <button type="button" class="pane-step-button" disabled={row >= of - 1} onClick={() => onRow(row + 1)}>
        Next row
      </button>
    </div>
  );
};

interface Props {
  readonly explained: Explained;
  readonly onRow: (row: number) => void;
}
