import { type BaseReferenceObject, FormulaRuntimeService, Interpreter } from "@univerjs/engine-formula";
import { demand } from "../demand";
import type { Block } from "../place";
import { engineFunction, type FunctionClass, type Result, type Value } from "./engine-function";

// The engine sees no circle that closes over INDIRECT or OFFSET. Here is kept where these led when a formula was last calculated.

/** Where a formula led, by the engine's words for sheets; "" is the sheet of the formula. */
interface Reach {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly blocks: readonly (Block & { readonly sheetId: string })[];
}

/** By workbook, then by the formula's cell. */
const reached = new Map<string, Map<string, Reach>>();

/** The formulas of a workbook whose INDIRECT or OFFSET led anywhere. */
export const reachesIn = (unit: string): readonly Reach[] => [...(reached.get(unit)?.values() ?? [])];

/** Since the engine last began to work out a formula or a part of one; it also tries parts beforehand, in other cells' names. */
let current: Reach["blocks"][number][] = [];

export const watched = (name: string): FunctionClass =>
  class extends engineFunction(name) {
    override calculate(...values: Value[]): Result {
      const answer = super.calculate(...values);
      if (!answer.isReferenceObject()) return answer;
      const reference = answer as BaseReferenceObject;
      const { startRow: row, endRow, startColumn: column, endColumn } = reference.getRangePosition();
      const size = { rows: endRow - row + 1, columns: endColumn - column + 1 };
      current.push({ sheetId: reference.getSheetId(), row, column, ...size });
      return answer;
    }
  };

/** Notes what a formula reached at the moment its value is taken for good. */
export const watchAddresses = (): void => {
  const { prototype } = Interpreter;
  const { prototype: runtime } = FormulaRuntimeService;
  demand(typeof prototype.execute === "function", "it runs no formulas");
  demand(typeof runtime.setRuntimeData === "function", "it keeps no values");
  const { execute, executeAsync } = prototype;
  const { setRuntimeData } = runtime;
  prototype.execute = function (node) {
    current = [];
    return execute.call(this, node);
  };
  prototype.executeAsync = function (node) {
    current = [];
    return executeAsync.call(this, node);
  };
  runtime.setRuntimeData = function (value) {
    const { currentUnitId: unit, currentSubUnitId: sheetId, currentRow: row, currentColumn: column } = this;
    const own = reached.get(unit) ?? new Map<string, Reach>();
    if (current.length > 0)
      reached.set(unit, own.set(`${sheetId} ${row} ${column}`, { sheetId, row, column, blocks: current }));
    else if (own.size > 0) own.delete(`${sheetId} ${row} ${column}`);
    current = [];
    return setRuntimeData.call(this, value);
  };
};

/** A workbook that is closed. */
export const forgetReached = (unit: string): void => {
  reached.delete(unit);
};
