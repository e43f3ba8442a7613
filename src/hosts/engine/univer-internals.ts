import type { Univer } from "@univerjs/core";
import { ALL_IMPLEMENTED_FUNCTIONS_SET, CELL_INVERTED_INDEX_CACHE, FormulaDataModel } from "@univerjs/engine-formula";
import { catchBreakdowns, catchMisreadings } from "./breakdowns";
import { installCellIndex } from "./cell-index";
import { watchAddresses } from "./cured/addresses";
import { curedFunctions } from "./cured/functions";
import { askWholeSheet, boundReferences, keepEmptyText, keepTexts, readAnew } from "./cures";
import { demand } from "./demand";
import { installOperators } from "./operators";
import { settleSpills } from "./settle";

// What reaches past the grid engine's public face is gathered here: this file and those it imports. Each reach is checked when the
// engine is prepared.

let prepared = false;

/** Cures the engine's faults that show as wrong numbers. Call it once before the first Univer is made; more calls do nothing. */
export const prepareEngine = (): void => {
  if (prepared) return;
  for (const method of ["set", "clear", "canUseCache", "getCellPositions", "getCellValuePositions"] as const)
    demand(typeof CELL_INVERTED_INDEX_CACHE[method] === "function", `its index of cells has no ${method}`);
  for (const method of ["getArrayFormulaRange", "getArrayFormulaCellData"] as const)
    demand(typeof FormulaDataModel.prototype[method] === "function", `it keeps no ${method}`);
  installCellIndex(CELL_INVERTED_INDEX_CACHE);
  keepEmptyText();
  askWholeSheet();
  boundReferences();
  readAnew();
  keepTexts();
  catchMisreadings();
  watchAddresses();
  catchBreakdowns();
  installOperators();
  demand(settleSpills(), "it calculates in other steps");
  prepared = true;
};

const engineFunctions: ReadonlySet<string> = new Set([
  ...[...ALL_IMPLEMENTED_FUNCTIONS_SET].map(String),
  ...curedFunctions.map(([, name]) => name),
  ...["LET", "LAMBDA"],
]);

/** Whether the engine has a built-in function of this name, in any case. */
export const hasEngineFunction = (name: string): boolean => engineFunctions.has(name.toUpperCase());

/** The engine's own record of answers that fill several cells: their values by row and column, and their extents by first cell. */
export const formulaRecord = (univer: Univer): FormulaDataModel => univer.__getInjector().get(FormulaDataModel);
