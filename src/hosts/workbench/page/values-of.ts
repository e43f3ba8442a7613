import type { Range } from "../../../definition/cells";
import type { OpenBook } from "./open-book";
import { follow } from "./reference";

/** The values of a reference as it stands in a formula of `sheet`. Whole columns and rows end where the sheet does. */
export const valuesOf = (open: OpenBook, reference: string, sheet: string): Range => {
  const found = follow(open, reference, sheet);
  const size = open.grid.api.getActiveWorkbook()?.getSheetByName(found.sheet);
  if (!size || !open.view) throw new Error(`There is no sheet "${found.sheet}".`);
  const { view } = open;
  const { top, left, bottom = top, right = left } = found.range;
  const [firstRow, lastRow] = [top ?? 0, bottom ?? size.getMaxRows() - 1];
  const [firstColumn, lastColumn] = [left ?? 0, right ?? size.getMaxColumns() - 1];
  return Array.from({ length: lastRow - firstRow + 1 }, (_, r) =>
    Array.from({ length: lastColumn - firstColumn + 1 }, (_, c) =>
      view.valueAt({ sheet: found.sheet, row: firstRow + r, column: firstColumn + c }),
    ),
  );
};
