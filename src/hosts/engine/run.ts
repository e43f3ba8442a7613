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
import { type Book, hasFormulas } from "./book";
import { forgetReached } from "./cured/addresses";
import { curedFunctions } from "./cured/functions";
import { type Defect, functionsFor } from "./functions";
import { type GridView, viewOf } from "./grid-view";
import { type Room, snapshotOf } from "./snapshot";
import { prepareEngine } from "./univer-internals";

/** One calculation of a workbook that is in the engine's words. */
export interface Run extends GridView {
  readonly defects: readonly Defect[];
  /** Gives the engine's memory back; nothing can be read after it. */
  close(): void;
}

/** A calculation that was given up. */
export class UnfinishedCalculation extends Error {
  override readonly name = "UnfinishedCalculation";
}

/** Longer than any workbook of people takes. */
const PATIENCE_MINUTES = 20;

export interface RunOptions {
  /** Where calls are remembered by their cells. */
  readonly memory?: Memory;
  readonly room?: Room;
  readonly patienceMinutes?: number;
  /** Hears now and then how many formulas are done. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Throws UnfinishedCalculation. */
export const runEngine = async (
  book: Book,
  catalogue: readonly AnyDefinition[],
  { memory = new Memory(), room, patienceMinutes = PATIENCE_MINUTES, onProgress }: RunOptions = {},
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
  grid.getFormula().calculationProcessing(({ completedFormulasCount: calculated, totalFormulasToCalculate: all }) => {
    if (all > 0) onProgress?.(calculated, all);
  });
  grid.createWorkbook(snapshot);
  // The engine says nothing at the end of a calculation of nothing.
  if (hasFormulas(book)) await inTime(done, patienceMinutes);
  const close = () => {
    univer.dispose();
    forgetReached(snapshot.id);
  };
  return { ...viewOf(univer, snapshot.id, true), defects, close };
};

const inTime = async (done: Promise<unknown>, minutes: number): Promise<void> => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    const giveUp = () => reject(new UnfinishedCalculation(`The calculation did not end within ${minutes} minutes.`));
    timer = setTimeout(giveUp, minutes * 60_000);
  });
  await Promise.race([done, late]).finally(() => clearTimeout(timer));
};
