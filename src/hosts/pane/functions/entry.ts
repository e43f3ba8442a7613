import { parse, tokenize } from "@borgar/fx";
import type { Argument } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { callInFormula, inFormula, quoted } from "../../../definition/in-formula";
import { type Parameter, plain } from "../../../definition/parameter";
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

/** The formula of a form: what is left out at the end is not written. */
export const formulaOf = ({ name }: AnyDefinition, entries: readonly Entry[]): string =>
  callInFormula(
    name,
    entries.map((entry) => (entry.as === "left out" ? "" : entry.text)),
  );

/** A value as it is typed into a field, for an example: words without quotes. */
export const typedAs = (argument: Argument): string => (typeof argument === "string" ? argument : inFormula(argument));
