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
import { Memory } from "../../definition/memory";
import type { Book } from "./book";
import { type Defect, functionsFor } from "./functions";
import { type GridView, viewOf } from "./grid-view";
import { snapshotOf } from "./snapshot";
import { curedFunctions, prepareEngine } from "./univer-internals";

/** A workbook after calculation. */
export interface Calculated extends GridView {
  readonly defects: readonly Defect[];
}

/** Calculates every formula of a workbook, without a grid to show it. */
export const calculate = async (
  book: Book,
  catalogue: readonly AnyDefinition[],
  memory = new Memory(),
): Promise<Calculated> => {
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
  const snapshot = snapshotOf(book);
  const done = new Promise<unknown>((resolve) => grid.getFormula().calculationEnd(resolve));
  grid.createWorkbook(snapshot);
  await done;
  return { ...viewOf(univer, snapshot.id), defects };
};
