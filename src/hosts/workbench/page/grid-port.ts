import type { AnyDefinition } from "../../../definition/define";
import type { Memory } from "../../../definition/memory";
import type { Port } from "../../pane/port";
import { goTo } from "./go-to";
import { insertSheet } from "./insert-sheet";
import type { OpenBook } from "./open-book";
import { putInto } from "./put-into";
import { follow } from "./reference";
import { selectionOf } from "./selection";
import { valuesOf } from "./values-of";

/** The pane's port over the grid. */
export const gridPort = (book: OpenBook, memory: Memory, catalogue: readonly AnyDefinition[]): Port => ({
  onSelection: (listener) => {
    const tell = () => listener(selectionOf(book));
    tell();
    const stops = [book.onMoved(tell), book.onCalculated(tell)];
    return () => {
      for (const stop of stops) stop();
    };
  },
  selectionAt: async (address) => {
    const { sheet, range } = follow(book, address, book.place?.sheet ?? "");
    const found = selectionOf(book, { sheet, row: range.top ?? 0, column: range.left ?? 0 });
    if (!found) throw new Error("No workbook is open.");
    return found;
  },
  onCalculated: (listener) => book.onCalculated(listener),
  valuesAt: async (reference, sheet) => valuesOf(book, reference, sheet),
  lastCallAt: (address, definition) => memory.recall(address, definition),
  insertFormula: async (formula) => {
    if (!book.place) throw new Error("Select a cell first.");
    putInto(book, book.place, formula, catalogue);
  },
  insertSheet: (sheet) => insertSheet(book, catalogue, sheet),
  drawsCharts: false,
  recalculate: async () => book.grid.api.getFormula().executeCalculation(),
  goTo: async (address) => {
    const { sheet, range } = follow(book, address, book.place?.sheet ?? "");
    goTo(book, { sheet, row: range.top ?? 0, column: range.left ?? 0 });
  },
});
