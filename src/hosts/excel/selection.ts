import type { Selection } from "../pane/port";
import { whenIdle } from "./in-excel";
import { valuesOf } from "./values-at";

/** The selected cell, its formula, and the spill it lies in. Of several selected cells the active one. */
export const readSelection = (): Promise<Selection> =>
  whenIdle(async (context) => {
    const cell = context.workbook.getActiveCell();
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
