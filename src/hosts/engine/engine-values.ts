import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BooleanValueObject,
  type ArrayValueObject as EngineArray,
  type BaseValueObject as EngineValue,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { BadInput, type Refusal } from "../../definition/bad-input";
import type { Called } from "../../definition/call";
import { type Answer, type Argument, type Cell, CellError, type Range } from "../../definition/cells";

/** What rides on an error in a cell: why it stands there. `code` guards against a message that outlived its error. */
export interface ErrorNote {
  readonly code: string;
  readonly message: string;
}

// One reference gives one array within a calculation, so a column that many cells share is turned once.
const ranges = new WeakMap<EngineArray, Range>();

/** What the engine hands over for one argument. Left out → undefined, blank → null, one cell → its value. */
export const argumentOf = (value: EngineValue): Argument => {
  if (!value.isArray()) return value.isNull() ? undefined : cellOf(value);
  const array = value as EngineArray;
  const known = ranges.get(array);
  if (known) return known;
  const range = array.getArrayValue().map((row) => Array.from(row, (value) => cellOf(value)));
  if (range.length === 1 && range[0]?.length === 1) return range[0][0];
  ranges.set(array, range);
  return range;
};

const cellOf = (value: Nullable<EngineValue>): Cell => {
  if (!value || value.isNull()) return null;
  if (value.isError()) return new CellError(String(value.getValue()));
  const plain = value.getValue();
  return typeof plain === "number" || typeof plain === "boolean" ? plain : String(plain);
};

/** The answer of a call as the engine takes it. Throws on a number that is none: that is a defect, never a value to show. */
export const engineAnswer = (called: Called): EngineValue => {
  const columns = Math.max(0, ...called.map((row) => row.length));
  const values = called.map((row) => Array.from({ length: columns }, (_, column) => engineCell(row[column] ?? "")));
  const only = values.length === 1 && columns === 1 ? values[0]?.[0] : undefined;
  if (only) return only;
  return ArrayValueObject.create({
    calculateValueList: values,
    rowCount: values.length,
    columnCount: columns,
    unitId: "",
    sheetId: "",
    row: 0,
    column: 0,
  });
};

const engineCell = (answer: Answer | Refusal): EngineValue => {
  if (typeof answer === "number") {
    if (!Number.isFinite(answer)) throw new Error(`It answered ${answer}, which is no number to show.`);
    return NumberValueObject.create(answer);
  }
  if (typeof answer === "string") return StringValueObject.create(answer);
  if (typeof answer === "boolean") return BooleanValueObject.create(answer);
  return engineError(answer instanceof BadInput ? ErrorType.VALUE : ErrorType.NA, answer.message);
};

/** An error with its sentence. Never the engine's shared error objects: a sentence on one of those shows up in other cells. */
export const engineError = (code: ErrorType, message: string): EngineValue =>
  new ErrorValueObject(code).withCustomData({ code, message } satisfies ErrorNote);
