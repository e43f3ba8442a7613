import type { Memory } from "../../definition/memory";
import type { Port } from "../pane/port";
import { inExcel } from "./in-excel";
import { insertSheet } from "./insert-sheet";
import { listen, oneAtATime } from "./listen";
import { readSelection, readSelectionAt } from "./selection";
import { valuesAt } from "./values-at";
import { partsOf, wholeAddress } from "./whole-address";

/** Excel as the pane meets it. `memory` is the one that the sheet functions write. */
export const excelPort = (memory: Memory): Port => ({
  onSelection(listener) {
    const tell = oneAtATime(() =>
      readSelection().then(listener, () => {
        // A chart or picture is selected: there is no cell to tell about.
        listener(undefined);
      }),
    );
    void tell();
    // The selected cell may be given another formula, or another answer, without any other being selected.
    return listen(({ worksheets }) => [
      worksheets.onSelectionChanged.add(tell),
      worksheets.onActivated.add(tell),
      worksheets.onChanged.add(tell),
      worksheets.onCalculated.add(tell),
    ]);
  },

  selectionAt: readSelectionAt,

  onCalculated: (listener) => listen(({ worksheets }) => [worksheets.onCalculated.add(async () => listener())]),

  valuesAt,

  lastCallAt: (address, definition) => memory.recall(wholeAddress(address), definition),

  insertFormula: (formula) =>
    inExcel(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("address,formulas");
      await context.sync();
      const present = String(cell.formulas[0]?.[0] ?? "");
      // What an add-in overwrites cannot everywhere be brought back by Undo.
      if (present !== "" && !present.toUpperCase().includes("BIMETAL."))
        throw new Error(`${cell.address} is not empty: select an empty cell for the formula.`);
      cell.formulas = [[formula]];
      await context.sync();
    }),

  insertSheet,
  drawsCharts: true,

  recalculate: () =>
    inExcel(async (context) => {
      context.workbook.application.calculate(Excel.CalculationType.full);
      await context.sync();
    }),

  goTo: (address) =>
    inExcel(async (context) => {
      const { sheet, cell } = partsOf(address);
      const worksheets = context.workbook.worksheets;
      const worksheet = sheet ? worksheets.getItem(sheet) : worksheets.getActiveWorksheet();
      worksheet.activate();
      worksheet.getRange(cell).select();
      await context.sync();
    }),
});
