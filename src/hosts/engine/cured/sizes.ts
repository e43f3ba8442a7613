import { MOST_CELLS } from "../cures";
import { firstOf } from "./cells";
import { engineFunction, type FunctionClass, type Result, type Value } from "./engine-function";

/** A function whose arguments say how large its answer is, from the `first` of them on. */
export const bounded = (name: string, first: number): FunctionClass =>
  class extends engineFunction(name) {
    override calculate(...values: Value[]): Result {
      const [rows = 1, columns = 1] = [values[first], values[first + 1]].map((value) =>
        Number((value && firstOf(value))?.getValue() ?? 1),
      );
      if (rows * columns > MOST_CELLS) throw new Error("The answer is too large.");
      return super.calculate(...values);
    }
  };
