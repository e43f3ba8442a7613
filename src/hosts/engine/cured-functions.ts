import {
  type ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  functionLogical,
  functionLookup,
  functionMath,
  functionText,
  StringValueObject,
} from "@univerjs/engine-formula";
import { MOST_CELLS } from "./cures";
import { demand, type FunctionClass } from "./demand";

const engineSort = functionLookup.find(([, name]) => (name as string) === "SORT")?.[0] as FunctionClass | undefined;

/** The engine's SORT turns over the very cells that other formulas of the same pass read; this one sorts a copy. */
export class Sort extends (engineSort ?? BaseFunction) {
  override calculate(array: BaseValueObject, ...rest: BaseValueObject[]): ReturnType<BaseFunction["calculate"]> {
    demand(engineSort !== undefined, "it has no SORT");
    return super.calculate(array?.isArray() ? array.map((value) => value) : array, ...rest);
  }
}

/** A number within a text has 15 digits in a spreadsheet; the engine writes out all that the double has. */
export const joinsNumbers = (name: string): FunctionClass => {
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

const engineUnique = functionLookup.find(([, name]) => (name as string) === "UNIQUE")?.[0] as FunctionClass | undefined;

/** UNIQUE takes "x" and "X" for one; the engine for two. In a single row or column each text gets the letters it first came in. */
export class Unique extends (engineUnique ?? BaseFunction) {
  override calculate(array: BaseValueObject, ...rest: BaseValueObject[]): ReturnType<BaseFunction["calculate"]> {
    demand(engineUnique !== undefined, "it has no UNIQUE");
    if (!array?.isArray()) return super.calculate(array, ...rest);
    const cells = array as ArrayValueObject;
    if (cells.getRowCount() > 1 && cells.getColumnCount() > 1) return super.calculate(array, ...rest);
    const first = new Map<string, BaseValueObject>();
    const alike = cells.mapValue((cell) => {
      if (!cell?.isString()) return cell;
      const key = String(cell.getValue()).toLowerCase();
      if (!first.has(key)) first.set(key, cell);
      return first.get(key) as BaseValueObject;
    });
    return super.calculate(alike, ...rest);
  }
}

/** A function whose arguments say how large its answer is, from the `first` of them on. */
export const bounded = (name: string, first: number): FunctionClass => {
  const engineClass = [...functionMath, ...functionLookup, ...functionLogical].find(
    ([, known]) => (known as string) === name,
  )?.[0];
  return class extends ((engineClass as FunctionClass | undefined) ?? BaseFunction) {
    override calculate(...values: BaseValueObject[]): ReturnType<BaseFunction["calculate"]> {
      demand(engineClass !== undefined, `it has no ${name}`);
      const [rows = 1, columns = 1] = [values[first], values[first + 1]].map((value) => {
        const one = value?.isArray() ? (value as ArrayValueObject).getFirstCell() : value;
        return Number(one?.getValue() ?? 1);
      });
      if (rows * columns > MOST_CELLS) throw new Error("The answer is too large.");
      return super.calculate(...values);
    }
  };
};
