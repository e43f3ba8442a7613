import * as library from "@formulajs/formulajs";
import type fc from "fast-check";
import type { Cell } from "../../../../src/definition/cells";

/** One argument: a value, or the rows of a range. */
export type Given = Cell | readonly (readonly Cell[])[];

export interface Comparison {
  readonly name: string;
  readonly arguments: fc.Arbitrary<readonly Given[]>;
  readonly library: (...given: never[]) => unknown;
  /** How far apart, in parts of the value, the two may be: the library's inverse distributions stop early. */
  readonly tolerance: number;
}

type Functions = Record<string, unknown>;

/** The library nests dotted names (T.INV["2T"]) or writes them without the dot (STDEVS). */
export const inLibrary = (name: string): Comparison["library"] => {
  const parts = name.split(".");
  const nested = parts.reduce<unknown>((found, part) => (found as Functions | undefined)?.[part], library);
  const found = nested ?? (library as Functions)[parts.join("")];
  if (typeof found !== "function") throw new Error(`The second engine has no ${name}.`);
  return found as Comparison["library"];
};

export const compare = (
  names: string,
  given: fc.Arbitrary<readonly Given[]>,
  { tolerance = 1e-9, asked = undefined as Comparison["library"] | undefined } = {},
): Comparison[] =>
  names.split(" ").map((name) => {
    return { name, arguments: given, library: asked ?? inLibrary(name), tolerance };
  });
