import { type Argument, type Cell, CellError } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import type { Parameter } from "../../definition/parameter";

/** What Excel hands to a function, in our words. */
interface Handed {
  readonly args: readonly Argument[];
  /** The calling cell as Excel writes it. Unknown inside LAMBDA helpers and previews. */
  readonly address: string | undefined;
}

/**
 * Excel hands over one value for each parameter it knows of, then an Invocation object, always last. A matrix stands for every
 * argument, also for one cell ([[51]]); null stands for one left out; a repeating parameter gets a list of such matrices.
 */
export const readHanded = (definition: AnyDefinition, handed: readonly unknown[]): Handed => {
  const { address } = handed.at(-1) as CustomFunctions.Invocation;
  const values = handed.slice(0, -1);
  const parameters = Object.values(definition.parameters as Record<string, Parameter>);
  const repeatingAt = parameters.findIndex(({ repeating }) => repeating);
  const spread = values.flatMap((value, place) =>
    place === repeatingAt ? ((value as readonly unknown[] | null) ?? []) : [value],
  );
  const args = spread.map(argumentOf);
  // Excel may still know an older list of parameters than this script, or a newer one: what is left out at the end says nothing.
  while (args.length > 0 && args.at(-1) === undefined) args.pop();
  return { args, address };
};

const argumentOf = (value: unknown): Argument => {
  if (value === null || value === undefined) return undefined;
  if (!Array.isArray(value)) return cellOf(value);
  return value.map((row: unknown) => (Array.isArray(row) ? row.map(cellOf) : [cellOf(row)]));
};

const cellOf = (value: unknown): Cell => {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (value === null || value === undefined) return null;
  // An error cell comes as a CustomFunctions.Error. A richer cell (a picture, a record) cannot be taken, which is #VALUE! too.
  const { code } = value as Partial<CustomFunctions.Error>;
  return new CellError(code ?? "#VALUE!");
};
