import { type Argument, type Cell, holdSame, isRange } from "../../../definition/cells";

/**
 * Whether two arguments hold the same. Hosts hand a blank cell over as nothing, as 0 or as "", and cut whole columns off where the
 * sheet is used no further, so these are alike.
 */
export const sameCells = (a: Argument, b: Argument): boolean => {
  const [rowsOfA, rowsOfB] = [rowsOf(a), rowsOf(b)];
  const length = Math.max(rowsOfA.length, rowsOfB.length);
  for (let row = 0; row < length; row++) {
    const [cellsOfA, cellsOfB] = [rowsOfA[row] ?? [], rowsOfB[row] ?? []];
    const width = Math.max(cellsOfA.length, cellsOfB.length);
    for (let column = 0; column < width; column++)
      if (!sameCell(cellsOfA[column] ?? null, cellsOfB[column] ?? null)) return false;
  }
  return true;
};

const rowsOf = (argument: Argument): readonly (readonly Cell[])[] =>
  isRange(argument) ? argument : [[argument ?? null]];

const sameCell = (a: Cell, b: Cell): boolean => holdSame(a, b) || (isBlank(a) && isBlank(b));

const isBlank = (cell: Cell): boolean => cell === null || cell === 0 || cell === "";
