import type { IRange } from "@univerjs/core";
import { CalculateFormulaService, FORMULA_REF_TO_ARRAY_CACHE, type IAllRuntimeData } from "@univerjs/engine-formula";

type Ranges = ReturnType<Engine["_getArrayFormulaDirtyRangeAndExcludedRange"]>;

/** The parts of the engine's calculation that this file takes hold of. */
interface Engine {
  _apply(spillsOnly?: boolean): Promise<IAllRuntimeData | undefined>;
  _executeStep(): Promise<true | undefined>;
  _getArrayFormulaDirtyRangeAndExcludedRange(
    spills: IAllRuntimeData["arrayFormulaRange"],
    features: IAllRuntimeData["runtimeFeatureRange"],
  ): { dirtyRanges: unknown[]; excludedCell: unknown };
  _runtimeService: { isCycleDependency(): boolean };
  _currentConfigService: {
    loadDirtyRangesAndExcludedCell(dirty: Ranges["dirtyRanges"], excluded: Ranges["excludedCell"]): void;
  };
}

/** Answers that feed each other in a circle never settle. */
const MOST_PASSES = 200;

/**
 * The engine calculates what reads a spilled answer once more, but not what reads the answer of that. Here it goes on until no spilled
 * answer changes. Returns false when the engine is not made as this expects.
 */
export const settleSpills = (): boolean => {
  const engine = CalculateFormulaService.prototype as unknown as Engine;
  if (!engine._executeStep || !engine._apply || !engine._getArrayFormulaDirtyRangeAndExcludedRange) return false;
  engine._executeStep = async function (this: Engine) {
    let state = await this._apply();
    for (const unit of Object.keys(state?.unitData ?? {}))
      if (this._runtimeService.isCycleDependency()) circular.add(unit);
      else circular.delete(unit);
    let before = new Map<string, unknown[]>();
    for (let pass = 0; state; pass++) {
      if (pass === MOST_PASSES) for (const unit of Object.keys(state.arrayFormulaRange)) circular.add(unit);
      if (pass === MOST_PASSES) break;
      const now = spilledValues(state);
      const changed = onlyChanged(state.arrayFormulaRange, before, now);
      const features = pass === 0 ? state.runtimeFeatureRange : {};
      const { dirtyRanges, excludedCell } = this._getArrayFormulaDirtyRangeAndExcludedRange(changed, features);
      if (dirtyRanges.length === 0) break;
      before = now;
      FORMULA_REF_TO_ARRAY_CACHE.clear();
      this._currentConfigService.loadDirtyRangesAndExcludedCell(dirtyRanges, excludedCell);
      state = await this._apply(true);
    }
    return state ? true : undefined;
  };
  return true;
};

const circular = new Set<string>();

/** Whether formulas of a workbook went in a circle when it was last calculated: their values mean nothing. */
export const goesInCircle = (unit: string): boolean => circular.has(unit);

type Spills = IAllRuntimeData["arrayFormulaRange"];

const eachSpill = (
  spills: Spills,
  visit: (unit: string, sheet: string, row: number, column: number, range: IRange) => void,
) => {
  for (const [unit, sheets] of Object.entries(spills))
    for (const [sheet, rows] of Object.entries(sheets ?? {}))
      for (const [row, columns] of Object.entries(rows))
        for (const [column, range] of Object.entries(columns as Record<string, IRange>))
          visit(unit, sheet, Number(row), Number(column), range);
};

const keyOf = (...place: (string | number)[]): string => place.join("\n");

/** The values of each spilled answer, by its first cell. */
const spilledValues = ({ arrayFormulaRange, arrayFormulaCellData }: IAllRuntimeData): Map<string, unknown[]> => {
  const values = new Map<string, unknown[]>();
  eachSpill(arrayFormulaRange, (unit, sheet, row, column, { startRow, endRow, startColumn, endColumn }) => {
    const cells = arrayFormulaCellData[unit]?.[sheet];
    const own: unknown[] = [endRow, endColumn];
    for (let r = startRow; r <= endRow; r++)
      for (let c = startColumn; c <= endColumn; c++) own.push(cells?.getValue(r, c)?.v);
    values.set(keyOf(unit, sheet, row, column), own);
  });
  return values;
};

const onlyChanged = (spills: Spills, before: Map<string, unknown[]>, now: Map<string, unknown[]>): Spills => {
  const changed: Record<string, Record<string, Record<number, Record<number, IRange>>>> = {};
  eachSpill(spills, (unit, sheet, row, column, range) => {
    const key = keyOf(unit, sheet, row, column);
    const old = before.get(key);
    const values = now.get(key) ?? [];
    if (old && old.length === values.length && old.every((value, place) => Object.is(value, values[place]))) return;
    changed[unit] ??= {};
    const sheets = changed[unit] as Record<string, Record<number, Record<number, IRange>>>;
    sheets[sheet] ??= {};
    const rows = sheets[sheet] as Record<number, Record<number, IRange>>;
    rows[row] ??= {};
    (rows[row] as Record<number, IRange>)[column] = range;
  });
  return changed;
};
