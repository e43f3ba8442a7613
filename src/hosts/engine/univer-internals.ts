import type { Univer } from "@univerjs/core";
import { ALL_IMPLEMENTED_FUNCTIONS_SET, CELL_INVERTED_INDEX_CACHE, FormulaDataModel } from "@univerjs/engine-formula";
import { installCellIndex } from "./cell-index";
import { bounded, joinsNumbers, Sort, Unique } from "./cured-functions";
import { askWholeSheet, boundReferences, catchBreakdowns, catchMisreadings, keepEmptyText, readAnew } from "./cures";
import { demand, type FunctionClass } from "./demand";
import { AnchorArray, installOperators, Single } from "./operators";
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
  catchMisreadings();
  catchBreakdowns();
  installOperators();
  demand(settleSpills(), "it calculates in other steps");
  prepared = true;
};

/** Functions to be registered in place of the engine's own, beside ours. */
export const curedFunctions: readonly [FunctionClass, string][] = [
  [Sort, "SORT"],
  [Unique, "UNIQUE"],
  ...["CONCATENATE", "CONCAT", "TEXTJOIN"].map((name): [FunctionClass, string] => [joinsNumbers(name), name]),
  ...["SEQUENCE", "RANDARRAY", "MAKEARRAY"].map((name): [FunctionClass, string] => [bounded(name, 0), name]),
  [bounded("EXPAND", 1), "EXPAND"],
  [Single, "SINGLE"],
  [AnchorArray, "ANCHORARRAY"],
];

const engineFunctions: ReadonlySet<string> = new Set([
  ...[...ALL_IMPLEMENTED_FUNCTIONS_SET].map(String),
  ...curedFunctions.map(([, name]) => name),
  ...["LET", "LAMBDA"],
]);

/** Whether the engine has a built-in function of this name, in any case. */
export const hasEngineFunction = (name: string): boolean => engineFunctions.has(name.toUpperCase());

/** The engine's own record of answers that fill several cells: their values by row and column, and their extents by first cell. */
export const formulaRecord = (univer: Univer): FormulaDataModel => univer.__getInjector().get(FormulaDataModel);
