import { stringifyA1Ref } from "@borgar/fx";
import type { Cell } from "../../definition/cells";
import type { Block, Look, ReadyCell } from "../pane/sheets/ready-sheet";

// Cells put together, so that Excel is asked seldom.

/** "A1:C3". */
export const addressOf = ({ row, column, rows, columns }: Block): string =>
  stringifyA1Ref({ range: { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 } });

/** Values that stand side by side without a gap. */
export const rowsOf = (cells: readonly ReadyCell[]): { readonly block: Block; readonly values: Cell[][] }[] => {
  const runs: ReadyCell[][] = [];
  for (const cell of [...cells].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const last = runs.at(-1)?.at(-1);
    if (last && last.row === cell.row && last.column + 1 === cell.column) runs.at(-1)?.push(cell);
    else runs.push([cell]);
  }
  return runs.map((run) => ({
    block: { row: run[0]?.row ?? 0, column: run[0]?.column ?? 0, rows: 1, columns: run.length },
    values: [run.map(({ value }) => value)],
  }));
};

/** Rectangles of one look: cells below each other first, then such columns that are alike. */
export const blocksOf = (cells: readonly ReadyCell[]): { readonly block: Block; readonly look: Look }[] => {
  const dressed = cells.flatMap(({ row, column, style }) => (style ? [{ row, column, style }] : []));
  const keyed = dressed.map((cell) => ({ ...cell, key: JSON.stringify(cell.style) }));
  const found: { block: Block; look: Look; key: string }[] = [];
  for (const { row, column, style, key } of keyed.sort((a, b) => a.column - b.column || a.row - b.row)) {
    const last = found.at(-1);
    const goesOn = last?.key === key && last.block.column === column && last.block.row + last.block.rows === row;
    if (last && goesOn) last.block = { ...last.block, rows: last.block.rows + 1 };
    else found.push({ block: { row, column, rows: 1, columns: 1 }, look: style, key });
  }
  return found.reduce<typeof found>((joined, { block, look, key }) => {
    const left = joined.find(
      ({ block: { row, rows, column, columns }, key: own }) =>
        own === key && row === block.row && rows === block.rows && column + columns === block.column,
    );
    if (left) left.block = { ...left.block, columns: left.block.columns + 1 };
    else joined.push({ block, look, key });
    return joined;
  }, []);
};
