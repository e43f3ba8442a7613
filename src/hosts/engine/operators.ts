import {
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  LexerNode,
  PrefixNodeFactory,
  RangeReferenceObject,
  SuffixNodeFactory,
} from "@univerjs/engine-formula";
import { demand } from "./demand";

type EngineNode = { _handlerPound?: unknown; _handlerAT?: unknown };

/** Gives the engine `#` and `@` as spreadsheets have them. */
export const installOperators = (): void => {
  nodeOf(SuffixNodeFactory, "#", "_handlerPound")._handlerPound = spillOf;
  nodeOf(PrefixNodeFactory, "@", "_handlerAT")._handlerAT = intersection;
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

/** `SINGLE(range)`, which files write for `@`. */
export class Single extends BaseFunction {
  override needsReferenceObject = true;
  override calculate(operand: BaseValueObject): ReturnType<BaseFunction["calculate"]> {
    const here = { _runtimeService: { currentRow: this.row, currentColumn: this.column } };
    return intersection.call(here, operand) as ReturnType<BaseFunction["calculate"]>;
  }
}

/** `ANCHORARRAY(cell)`, which files write for `#`. */
export class AnchorArray extends BaseFunction {
  override needsReferenceObject = true;
  override calculate(operand: BaseValueObject): ReturnType<BaseFunction["calculate"]> {
    return spillOf(operand) as ReturnType<BaseFunction["calculate"]>;
  }
}
