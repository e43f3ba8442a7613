import type { Selection } from "../pane/port";
import { whenIdle } from "./in-excel";
import { valuesOf } from "./values-at";
import { partsOf } from "./whole-address";

/** The selected cell, its formula, and the spill it lies in. Of several selected cells the active one. */
export const readSelection = (): Promise<Selection> => readCell(({ workbook }) => workbook.getActiveCell());

/** Another cell in the same way. */
export const readSelectionAt = (address: string): Promise<Selection> => {
  const { sheet, cell } = partsOf(address);
  return readCell(({ workbook }) => workbook.worksheets.getItem(sheet).getRange(cell));
};

const readCell = (found: (context: Excel.RequestContext) => Excel.Range): Promise<Selection> =>
  whenIdle(async (context) => {
    const cell = found(context);
    const parent = cell.getSpillParentOrNullObject();
    const spill = cell.getSpillingToRangeOrNullObject();
    cell.load("address,values,valueTypes,formulas,rowIndex,columnIndex");
    parent.load("address,formulas,rowIndex,columnIndex");
    spill.load("address");
    await context.sync();

    // A cell that is spilled into has a parent; the first cell of a spill has a range it spills to.
    const anchor = parent.isNullObject ? cell : parent;
    const isInSpill = !parent.isNullObject || !spill.isNullObject;
    const formula = String(anchor.formulas[0]?.[0] ?? "");
    return {
      address: cell.address,
      value: valuesOf(cell)[0]?.[0] ?? null,
      formula: formula.startsWith("=") ? formula : "",
      ...(isInSpill && {
        spill: {
          anchor: anchor.address,
          row: cell.rowIndex - anchor.rowIndex,
          column: cell.columnIndex - anchor.columnIndex,
        },
      }),
    };
  });
