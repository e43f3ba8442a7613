import type { Cell } from "../../../src/definition/cells";
import type { SheetCell, Style } from "../../../src/hosts/engine/book";

/** Rows of values as cells, from a first row and column on: the short way to write a sheet by hand. A text that starts with "=" is a formula. */
export const cellsFrom = (
  rows: readonly (readonly Cell[])[],
  { row = 0, column = 0, style = undefined as Style | undefined } = {},
): SheetCell[] =>
  rows.flatMap((values, r) =>
    values.flatMap((value, c): SheetCell[] => {
      if (value === null) return [];
      const place = { row: row + r, column: column + c, style };
      return [
        typeof value === "string" && value.startsWith("=")
          ? { ...place, value: null, formula: value }
          : { ...place, value },
      ];
    }),
  );
