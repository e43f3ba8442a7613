import { CellValueType, type Univer } from "@univerjs/core";
import {
  ALL_IMPLEMENTED_FUNCTIONS_SET,
  type ArrayValueObject,
  BaseFunction,
  BaseReferenceObject,
  type BaseValueObject,
  CELL_INVERTED_INDEX_CACHE,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  functionLookup,
  functionText,
  LexerNode,
  PrefixNodeFactory,
  RangeReferenceObject,
  StringValueObject,
  SuffixNodeFactory,
} from "@univerjs/engine-formula";
import { installCellIndex } from "./cell-index";
import { MOST_COLUMNS, MOST_ROWS } from "./place";
import { settleSpills } from "./settle";

// Everything in this program that reaches past the grid engine's public face is in this file, cell-index.ts and settle.ts. Each reach is
// checked when the engine is prepared, so that another version of it stops with a sentence and never with a wrong number.

const demand = (held: boolean, what: string): void => {
  if (!held) throw new Error(`The grid engine is not the one this program was written for (0.25.1): ${what}.`);
};

type FunctionClass = new (name: string) => BaseFunction;
type EngineNode = { _handlerPound?: unknown; _handlerAT?: unknown };

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
  demand(settleSpills(), "it calculates in other steps");
  nodeOf(SuffixNodeFactory, "#", "_handlerPound")._handlerPound = spillOf;
  nodeOf(PrefixNodeFactory, "@", "_handlerAT")._handlerAT = intersection;
  prepared = true;
};

/** A cell with empty text is not blank: `=D4=0` is FALSE there. The engine passes over such cells unless they look like formulas. */
const keepEmptyText = (): void => {
  const { prototype } = BaseReferenceObject;
  demand(typeof prototype.getCellData === "function", "its references read no cells");
  const read = prototype.getCellData;
  prototype.getCellData = function (row, column) {
    const cell = read.call(this, row, column);
    return cell?.v === "" && cell.t === CellValueType.STRING ? { ...cell, f: "=" } : cell;
  };
};

/**
 * SEQUENCE and its like say #REF! where the answer would pass the end of the sheet as loaded. Sheets here are loaded no larger than
 * they need to be, so they are told the size of a real one; then the engine says #SPILL! and keeps the extent, and room can be made.
 */
const askWholeSheet = (): void => {
  const { prototype } = BaseFunction;
  demand(typeof prototype.setSheetRowColumnCount === "function", "its functions are not told the size of their sheet");
  const tell = prototype.setSheetRowColumnCount;
  prototype.setSheetRowColumnCount = function () {
    tell.call(this, MOST_ROWS, MOST_COLUMNS);
  };
};

/** The prototype of the engine's node for an operator; its classes are not exported, but its factories make one. */
const nodeOf = (factory: unknown, operator: string, method: keyof EngineNode): EngineNode => {
  const token = new LexerNode();
  token.setToken(operator);
  const { checkAndCreateNodeType } = (factory as { prototype: { checkAndCreateNodeType(token: LexerNode): unknown } })
    .prototype;
  const node = checkAndCreateNodeType.call({}, token) as object | undefined;
  const prototype = (node && Object.getPrototypeOf(node)) as EngineNode | undefined;
  demand(typeof prototype?.[method] === "function", `its node for ${operator} has no ${method}`);
  return prototype as EngineNode;
};

type Operand = BaseReferenceObject | BaseValueObject;

/** `F2#`: the whole answer that starts in a cell; the engine gives its first cell only. */
const spillOf = (operand: Operand): Operand => {
  if (!operand.isReferenceObject()) return ErrorValueObject.create(ErrorType.VALUE);
  const cell = operand as BaseReferenceObject;
  const { startRow, startColumn } = cell.getRangePosition();
  const unit = cell.getUnitId();
  const sheet = cell.getSheetId();
  const range =
    cell.getRuntimeArrayFormulaRange()?.[unit]?.[sheet]?.[startRow]?.[startColumn] ??
    cell.getArrayFormulaRange()?.[unit]?.[sheet]?.[startRow]?.[startColumn];
  if (!range) return cell;
  const spill = new RangeReferenceObject({ ...range }, sheet, unit);
  spill.setDefaultUnitId(cell.getDefaultUnitId());
  spill.setDefaultSheetId(cell.getDefaultSheetId());
  spill.setForcedUnitIdDirect(unit);
  spill.setForcedSheetIdDirect(sheet);
  spill.setUnitData(cell.getUnitData());
  spill.setUnitStylesData(cell.getUnitStylesData());
  spill.setRuntimeData(cell.getRuntimeData());
  spill.setArrayFormulaCellData(cell.getArrayFormulaCellData());
  spill.setArrayFormulaRange(cell.getArrayFormulaRange());
  spill.setRuntimeArrayFormulaCellData(cell.getRuntimeArrayFormulaCellData());
  spill.setRuntimeArrayFormulaRange(cell.getRuntimeArrayFormulaRange());
  spill.setRuntimeFeatureCellData(cell.getRuntimeFeatureCellData());
  return spill;
};

/** `@`: of a range the cell in the formula's own row or column, of an array its first value. The engine refuses a single cell. */
function intersection(
  this: { _runtimeService: { currentRow: number; currentColumn: number } },
  operand: Operand,
): Operand {
  if (!operand.isReferenceObject()) {
    const value = operand as BaseValueObject;
    return value.isArray() ? (value as never as { getFirstCell(): BaseValueObject }).getFirstCell() : value;
  }
  const reference = operand as BaseReferenceObject;
  const { startRow, endRow, startColumn, endColumn } = reference.getRangePosition();
  const row = startRow === endRow ? startRow : this._runtimeService.currentRow;
  const column = startColumn === endColumn ? startColumn : this._runtimeService.currentColumn;
  if (row < startRow || row > endRow || column < startColumn || column > endColumn)
    return ErrorValueObject.create(ErrorType.VALUE);
  const one = { ...reference.getRangeData(), startRow: row, endRow: row, startColumn: column, endColumn: column };
  const cell = Object.assign(Object.create(Object.getPrototypeOf(reference)), reference) as BaseReferenceObject;
  cell.setRangeData(one);
  cell.setRefOffset(0, 0);
  return cell;
}

const engineSort = functionLookup.find(([, name]) => (name as string) === "SORT")?.[0] as FunctionClass | undefined;

/** The engine's SORT turns over the very cells that other formulas of the same pass read; this one sorts a copy. */
class Sort extends (engineSort ?? BaseFunction) {
  override calculate(array: BaseValueObject, ...rest: BaseValueObject[]): ReturnType<BaseFunction["calculate"]> {
    demand(engineSort !== undefined, "it has no SORT");
    return super.calculate(array?.isArray() ? array.map((value) => value) : array, ...rest);
  }
}

/** A number within a text has 15 digits in a spreadsheet; the engine writes out all that the double has. */
const joinsNumbers = (name: string): FunctionClass => {
  const engineClass = functionText.find(([, known]) => (known as string) === name)?.[0] as FunctionClass | undefined;
  return class extends (engineClass ?? BaseFunction) {
    override calculate(...values: BaseValueObject[]): ReturnType<BaseFunction["calculate"]> {
      demand(engineClass !== undefined, `it has no ${name}`);
      return super.calculate(...values.map(asJoined));
    }
  };
};

const asJoined = (value: BaseValueObject): BaseValueObject => {
  if (value.isArray()) return (value as ArrayValueObject).mapValue((each) => (each ? asJoined(each) : each));
  if (!value.isNumber() || Number.isInteger(value.getValue())) return value;
  return StringValueObject.create(String(Number(Number(value.getValue()).toPrecision(15))).toUpperCase());
};

/** `SINGLE(range)`, which files write for `@`. */
class Single extends BaseFunction {
  override needsReferenceObject = true;
  override calculate(operand: BaseValueObject): ReturnType<BaseFunction["calculate"]> {
    const here = { _runtimeService: { currentRow: this.row, currentColumn: this.column } };
    return intersection.call(here, operand) as ReturnType<BaseFunction["calculate"]>;
  }
}

/** `ANCHORARRAY(cell)`, which files write for `#`. */
class AnchorArray extends BaseFunction {
  override needsReferenceObject = true;
  override calculate(operand: BaseValueObject): ReturnType<BaseFunction["calculate"]> {
    return spillOf(operand) as ReturnType<BaseFunction["calculate"]>;
  }
}

/** Functions to be registered in place of the engine's own, beside ours. */
export const curedFunctions: readonly [FunctionClass, string][] = [
  [Sort, "SORT"],
  ...["CONCATENATE", "CONCAT", "TEXTJOIN"].map((name): [FunctionClass, string] => [joinsNumbers(name), name]),
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
