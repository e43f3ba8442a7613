import { type Block, isIn, type Place } from "./place";

/** Finds the block that holds a cell among many that do not overlap. */
export type FindBlock = (place: Pick<Place, "row" | "column">) => Block | undefined;

export const indexOfBlocks = (blocks: readonly Block[]): FindBlock => {
  const byColumn = new Map<number, Block[]>();
  for (const block of [...blocks].sort((a, b) => a.row - b.row))
    for (let column = block.column; column < block.column + block.columns; column++) {
      const own = byColumn.get(column);
      if (own) own.push(block);
      else byColumn.set(column, [block]);
    }
  return ({ row, column }) => {
    const own = byColumn.get(column) ?? [];
    let [low, high] = [0, own.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((own[middle] as Block).row <= row) low = middle + 1;
      else high = middle;
    }
    const above = own[low - 1];
    return above && isIn(above, { row, column }) ? above : undefined;
  };
};
