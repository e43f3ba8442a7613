import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import { CellAlertManagerService, ISheetClipboardService, UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import { defaultTheme } from "@univerjs/themes";
import { UniverUIPlugin } from "@univerjs/ui";
import "@univerjs/engine-formula/facade";
import "@univerjs/ui/facade";
import "@univerjs/docs-ui/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-ui/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/design/lib/index.css";
import "@univerjs/ui/lib/index.css";
import "@univerjs/docs-ui/lib/index.css";
import "@univerjs/sheets-ui/lib/index.css";
import "@univerjs/sheets-formula-ui/lib/index.css";
import "@univerjs/sheets-numfmt-ui/lib/index.css";
import type { AnyDefinition } from "../../../definition/define";
import type { Memory } from "../../../definition/memory";
import { curedFunctions } from "../../engine/cured/functions";
import { type Defect, descriptionsFor, functionsFor } from "../../engine/functions";
import { prepareEngine } from "../../engine/univer-internals";
import { pastesBy } from "./foreign-paste";
import { keepLetters } from "./letters-kept";
import { words } from "./locale";
import { alertsBut, type NotePlace } from "./quiet-alerts";
import ownTheme from "./theme.json";

/** The grid engine with its user interface, without the engine's own ribbon, formula bar and footer. */
export interface Grid {
  /** What it is drawn in. */
  readonly container: HTMLElement;
  readonly univer: Univer;
  readonly api: FUniver;
}

interface GridEars {
  readonly onDefect: (defect: Defect) => void;
  readonly isRefusal: (place: NotePlace) => boolean;
  /** Rows of texts that another program had put on the clipboard. */
  readonly onPaste: (rows: readonly (readonly string[])[]) => void;
}

/** Starts the grid in an element of the page, with our functions among its own. */
export const startGrid = (
  container: HTMLElement,
  catalogue: readonly AnyDefinition[],
  memory: Memory,
  { onDefect, isRefusal, onPaste }: GridEars,
): Grid => {
  prepareEngine();
  keepLetters();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: words },
    logLevel: LogLevel.SILENT,
    theme: { ...defaultTheme, ...ownTheme },
  });
  const own = functionsFor(catalogue, memory, onDefect);
  univer.registerPlugin(UniverRenderEnginePlugin);
  // After each so many formulas the page may draw and listen.
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [...curedFunctions, ...own], intervalCount: 50 });
  univer.registerPlugin(UniverUIPlugin, { container, header: false, footer: false, toolbar: false });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverSheetsPlugin, {
    // Beyond this size the engine would not bring a deleted sheet back.
    largeSheetOperation: { largeSheetCellCountThreshold: 1_000_000 },
  });
  univer.registerPlugin(UniverSheetsUIPlugin, {
    formulaBar: false,
    footer: false,
    override: [
      [CellAlertManagerService, { useClass: alertsBut(isRefusal) }],
      [ISheetClipboardService, { useClass: pastesBy(onPaste) }],
    ],
  });
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    description: descriptionsFor(catalogue),
    initialFormulaComputing: CalculationMode.FORCED,
  });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  return { container, univer, api: FUniver.newAPI(univer) };
};
