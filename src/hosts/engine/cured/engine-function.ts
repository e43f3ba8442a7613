import {
  type BaseFunction,
  type BaseValueObject,
  functionArray,
  functionCompatibility,
  functionDate,
  functionLogical,
  functionLookup,
  functionMath,
  functionStatistical,
  functionText,
} from "@univerjs/engine-formula";
import { demand } from "../demand";

/** A function of the engine, to be made by it. */
export type FunctionClass = new (name: string) => BaseFunction;
export type Value = BaseValueObject;
/** What a function of the engine answers. */
export type Result = ReturnType<BaseFunction["calculate"]>;

const byName = new Map(
  [
    ...functionArray,
    ...functionCompatibility,
    ...functionDate,
    ...functionLogical,
    ...functionLookup,
    ...functionMath,
    ...functionStatistical,
    ...functionText,
  ].map(([made, name]) => [String(name), made as FunctionClass]),
);

/** The engine's own class of a function, to be cured. */
export const engineFunction = (name: string): FunctionClass => {
  const found = byName.get(name);
  demand(found !== undefined, `it has no ${name}`);
  return found as FunctionClass;
};

/** The engine's function, its arguments turned into others before it sees them. */
export const withArguments = (name: string, turn: (values: Value[]) => Value[]): FunctionClass =>
  class extends engineFunction(name) {
    override calculate(...values: Value[]): Result {
      return super.calculate(...turn(values));
    }
  };

/** The engine's function, its answer turned into another. */
export const withAnswer = (name: string, turn: (answer: Value, values: Value[]) => Value): FunctionClass =>
  class extends engineFunction(name) {
    override calculate(...values: Value[]): Result {
      const answer = super.calculate(...values);
      return answer.isReferenceObject() ? answer : turn(answer as Value, values);
    }
  };
