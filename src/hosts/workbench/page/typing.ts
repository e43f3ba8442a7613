import { tokenize } from "@borgar/fx";
import type { AnyDefinition } from "../../../definition/define";
import { sheetFunction } from "../../engine/functions";

/** What a person is in the middle of typing. */
export type Typing =
  /** The beginning of a name: what it may become, and where it starts. */
  | { readonly typing: "name"; readonly from: number; readonly candidates: readonly AnyDefinition[] }
  /** An argument of one of our functions. */
  | { readonly typing: "argument"; readonly definition: AnyDefinition; readonly place: number }
  | undefined;

/** Reads a formula up to the caret. */
export const typingIn = (formula: string, caret: number, catalogue: readonly AnyDefinition[]): Typing => {
  if (!formula.startsWith("=")) return undefined;
  const before = formula.slice(0, caret);
  const word = /[A-Za-z][A-Za-z.]*$/.exec(before)?.[0] ?? "";
  const isInText = (before.match(/"/g)?.length ?? 0) % 2 === 1;
  if (isInText) return argumentIn(before, catalogue);
  if (word.length >= 2) {
    const candidates = candidatesFor(word, catalogue);
    if (candidates.length > 0) return { typing: "name", from: caret - word.length, candidates };
  }
  return argumentIn(before, catalogue);
};

/** Names that begin so, with or without "BIMETAL."; beyond two letters also those that hold the word. */
const candidatesFor = (word: string, catalogue: readonly AnyDefinition[]): AnyDefinition[] => {
  const wanted = word.toUpperCase();
  const begins = catalogue.filter(
    (definition) => sheetFunction(definition).startsWith(wanted) || definition.name.startsWith(wanted),
  );
  const holds = wanted.length > 2 ? catalogue.filter(({ name }) => name.includes(wanted)) : [];
  return [...new Set([...begins, ...holds])];
};

/** The innermost open call that is ours, and which of its arguments the caret stands in. */
const argumentIn = (before: string, catalogue: readonly AnyDefinition[]): Typing => {
  const open: { name: string; place: number }[] = [];
  let last = "";
  for (const { type, value } of tokenize(before)) {
    if (value === "(") open.push({ name: last, place: 0 });
    else if (value === "{") open.push({ name: "", place: 0 });
    else if (value === ")" || value === "}") open.pop();
    else if (value === "," && open.length > 0) (open[open.length - 1] as { place: number }).place++;
    last = type === "func" ? value.toUpperCase() : "";
  }
  for (const { name, place } of open.reverse()) {
    const definition = catalogue.find((candidate) => sheetFunction(candidate) === name);
    if (definition) return { typing: "argument", definition, place };
  }
  return undefined;
};
