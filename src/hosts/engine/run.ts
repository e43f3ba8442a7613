import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import type { AnyDefinition } from "../../definition/define";
import type { Memory } from "../../definition/memory";
import type { Book } from "./book";
import { type Defect, functionsFor } from "./functions";
import { type GridView, viewOf } from "./grid-view";
import { type Room, snapshotOf } from "./snapshot";
import { curedFunctions, prepareEngine } from "./univer-internals";

/** One calculation of a workbook that is in the engine's words. */
export interface Run extends GridView {
  readonly defects: readonly Defect[];
  /** Gives the engine's memory back; nothing can be read after it. */
  close(): void;
}

export const runEngine = async (
  book: Book,
  catalogue: readonly AnyDefinition[],
  memory: Memory,
  room?: Room,
): Promise<Run> => {
  prepareEngine();
  const defects: Defect[] = [];
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, {
    function: [...curedFunctions, ...functionsFor(catalogue, memory, (defect) => defects.push(defect))],
  });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  const grid = FUniver.newAPI(univer);
  const snapshot = snapshotOf(book, room);
  const done = new Promise<unknown>((resolve) => grid.getFormula().calculationEnd(resolve));
  grid.createWorkbook(snapshot);
  if (hasFormula(book)) await done;
  return { ...viewOf(univer, snapshot.id), defects, close: () => univer.dispose() };
};

// The engine says nothing at the end of a calculation of nothing.
const hasFormula = (book: Book): boolean =>
  book.sheets.some(({ cells }) => cells.some(({ formula }) => formula !== undefined));
