import { type Argument, type Cell, CellError, isRange } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";

/**
 * A call as a formula to be pasted into a sheet or handed to `npm run cell`. An array constant can hold no blank cell and no formula
 * a number that is none: the arguments are then written out behind it.
 */
export const formula = (definition: AnyDefinition, args: readonly Argument[]): string => {
  const text = `=BIMETAL.${definition.name}(${args.map(argument).join(",")})`;
  const cells = args.flatMap((one) => (isRange(one) ? one.flat() : [one]));
  const isWhole = cells.every((cell) => cell !== null && !(typeof cell === "number" && !Number.isFinite(cell)));
  return isWhole ? text : `${text}   with arguments ${JSON.stringify(args, unwritable)}`;
};

const argument = (one: Argument): string => {
  if (one === undefined) return "";
  return isRange(one) ? `{${one.map((row) => row.map(cell).join(",")).join(";")}}` : cell(one);
};

const cell = (one: Cell): string => {
  if (one === null) return '""';
  if (one instanceof CellError) return one.code;
  if (typeof one === "boolean") return one ? "TRUE" : "FALSE";
  if (typeof one === "number") return String(one).toUpperCase();
  return `"${one.replaceAll('"', '""')}"`;
};

const unwritable = (_: string, value: unknown): unknown => {
  if (value === undefined) return "left out";
  if (value instanceof CellError) return value.code;
  return typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
};
