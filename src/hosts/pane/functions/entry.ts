import { parse, tokenize } from "@borgar/fx";
import { type Argument, type Cell, CellError, isRange } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { type Parameter, plain } from "../../../definition/parameter";
import { prefix } from "../explain/formula";
import { literalIn } from "../explain/literal";

/** What was typed into one field of a form, as it goes into the formula. */
export type Entry =
  | { readonly as: "left out" }
  | { readonly as: "value"; readonly text: string; readonly value: Argument }
  | { readonly as: "reference"; readonly text: string };

/**
 * Reads a field: a number, TRUE or FALSE, an array or quoted text as in a formula; a cell or range; a word without quotes
 * where the argument takes words. A word that the argument knows is never taken for a cell.
 */
export const readEntry = (typed: string, parameter: Parameter): Entry => {
  const text = typed.trim().replace(/^=/, "");
  if (text === "") return { as: "left out" };
  const known = parameter.choices?.find((choice) => plain(choice) === plain(text));
  if (known) return { as: "value", text: quoted(known), value: known };
  try {
    const node = parse(tokenize(`=${text}`));
    const value = literalIn(node);
    if (value !== undefined) return { as: "value", text, value };
    if (node.type === "ReferenceIdentifier" && node.kind !== "name") return { as: "reference", text };
  } catch {
    // No formula: plain words.
  }
  return { as: "value", text: quoted(text), value: text };
};

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** "=BIMETAL.TRIP.RANGE(51,20,"C")": what is left out at the end is not written. */
export const formulaOf = (definition: AnyDefinition, entries: readonly Entry[]): string => {
  const texts = entries.map((entry) => (entry.as === "left out" ? "" : entry.text));
  while (texts.at(-1) === "") texts.pop();
  return `=${prefix}${definition.name}(${texts.join(",")})`;
};

/** A value as it is typed into a field, for an example. */
export const typedAs = (argument: Argument): string => {
  if (argument === undefined || argument === null) return "";
  if (isRange(argument)) return `{${argument.map((row) => row.map(constant).join(",")).join(";")}}`;
  return typeof argument === "string" ? argument : constant(argument);
};

const constant = (cell: Cell): string => {
  if (cell === null) return '""';
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === "string") return quoted(cell);
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
};
