import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import { Memory } from "../../../src/definition/memory";
import { catalogue } from "../../../src/functions";
import { type Book, hasFormulas } from "../../../src/hosts/engine/book";
import { curedFunctions } from "../../../src/hosts/engine/cured/functions";
import { functionsFor } from "../../../src/hosts/engine/functions";
import { viewOf } from "../../../src/hosts/engine/grid-view";
import { snapshotOf } from "../../../src/hosts/engine/snapshot";
import { prepareEngine } from "../../../src/hosts/engine/univer-internals";
import { type OpenedWorkbook, openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { type GridState, stateOf } from "../../../src/hosts/workbench/page/grid-state";
import { Moves } from "../../../src/hosts/workbench/page/moves";
import type { OpenBook } from "../../../src/hosts/workbench/page/open-book";
import { sizesOf } from "../../../src/hosts/workbench/page/opened";
import { type Copy, copyOf } from "../../../src/hosts/workbench/page/save-copy";
import { showWorkbook } from "../../../src/hosts/workbench/page/show-workbook";

/** A workbook in the workbench's grid, without a page to show it. */
export interface GridInNode {
  readonly opened: OpenedWorkbook;
  readonly api: FUniver;
  /** Calculates all that was changed. */
  settle(): Promise<void>;
  state(): GridState;
  /** As the page saves it. */
  saved(): Copy;
  close(): void;
}

export const gridInNode = async (bytes: Uint8Array): Promise<GridInNode> => {
  prepareEngine();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  const own = functionsFor(catalogue, new Memory(), ({ thrown }) => {
    throw thrown;
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [...curedFunctions, ...own] });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  const api = FUniver.newAPI(univer);
  const moves = new Moves(univer);
  const calculated = () => new Promise<unknown>((resolve) => api.getFormula().calculationEnd(resolve));
  const opened = openWorkbook(bytes, catalogue);
  let unit = "";
  // What of the page's open workbook has nothing to do with a page.
  const open = {
    grid: { univer, api },
    asRead: undefined as Book | undefined,
    shown: undefined as Book | undefined,
    view: undefined as GridState["view"] | undefined,
    open: async (shown: Book, asRead: Book) => {
      if (unit) api.disposeUnit(unit);
      const snapshot = snapshotOf(shown);
      unit = snapshot.id;
      const done = calculated();
      const workbook = api.createWorkbook(snapshot);
      if (hasFormulas(shown)) await done;
      Object.assign(open, { shown, asRead, view: viewOf(univer, unit), sizes: new Map(sizesOf(workbook.getSheets())) });
    },
    sizes: new Map<string, { rows: number; columns: number }>(),
    sizeAtFirst: (sheet: string) => open.sizes.get(sheet),
  };
  await showWorkbook(open as unknown as OpenBook, opened.book, catalogue);
  const state = () => stateOf(open as unknown as OpenBook, moves);
  return {
    opened,
    api,
    state,
    settle: async () => {
      const done = calculated();
      api.getFormula().executeCalculation();
      await done;
    },
    saved: () => copyOf(opened, state(), catalogue),
    close: () => univer.dispose(),
  };
};
