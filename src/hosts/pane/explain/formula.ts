import { type AstExpression, type CallExpression, parse, tokenize } from "@borgar/fx";
import type { Argument } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { literalIn } from "./literal";

/** One argument as it is written in a formula. */
export type Written =
  | { readonly as: "left out" }
  | { readonly as: "typed"; readonly text: string; readonly value: Argument }
  | { readonly as: "reference"; readonly text: string }
  | { readonly as: "calculation"; readonly text: string };

/** One of our functions where it stands in a formula. */
export interface OwnCall {
  readonly definition: AnyDefinition;
  /** "BIMETAL.TRIP.RANGE(E2,B2,C2)", as written. */
  readonly text: string;
  /** The formula is this call and nothing else, so a spill's rows are the call's rows. */
  readonly isWhole: boolean;
  readonly written: readonly Written[];
}

export interface Reading {
  /** Outer calls before the ones inside them. */
  readonly calls: readonly OwnCall[];
  /** Names that begin as ours do and are none of ours. */
  readonly strangers: readonly string[];
  /** Ours, but without the prefix. */
  readonly bare: readonly string[];
  /** It names a function of ours, but no sheet would read it. */
  readonly isBroken: boolean;
}

export const prefix = "BIMETAL.";

/** Finds our functions in a formula. A formula that cannot be read holds none. */
export const readFormula = (formula: string, catalogue: readonly AnyDefinition[]): Reading => {
  const calls: OwnCall[] = [];
  const strangers: string[] = [];
  const bare: string[] = [];
  const byName = new Map(catalogue.map((definition) => [prefix + definition.name, definition]));

  const visit = (node: AstExpression | null, isWhole: boolean): void => {
    if (!node) return;
    if (node.type === "CallExpression") {
      const name = nameOf(node);
      const definition = byName.get(name);
      if (definition)
        calls.push({ definition, isWhole, text: textOf(node, formula), written: writtenIn(node, formula) });
      else if (name.startsWith(prefix)) strangers.push(name);
      else if (byName.has(prefix + name)) bare.push(name);
    }
    for (const child of childrenOf(node)) visit(child, false);
  };

  try {
    visit(parse(tokenize(formula, { withLocation: true }), { permitArrayCalls: true }), true);
  } catch {
    // Half-typed formulas and another program's grammar are not ours to explain.
    return {
      calls: [],
      strangers: [],
      bare: [],
      isBroken: formula.startsWith("=") && formula.toUpperCase().includes(prefix),
    };
  }
  return { calls, strangers, bare, isBroken: false };
};

const nameOf = ({ callee }: CallExpression): string => (callee.type === "Identifier" ? callee.name.toUpperCase() : "");

const writtenIn = (node: CallExpression, formula: string): Written[] =>
  (node.arguments as (AstExpression | null)[]).map((argument): Written => {
    if (!argument) return { as: "left out" };
    const text = textOf(argument, formula);
    const value = literalIn(argument);
    if (value !== undefined) return { as: "typed", text, value };
    return isReference(argument) ? { as: "reference", text } : { as: "calculation", text };
  });

/** "B2:B20", "Rating", "Trials[current]", and the whole of an answer: "F2#". */
const isReference = (node: AstExpression): boolean =>
  node.type === "ReferenceIdentifier" ||
  (node.type === "UnaryExpression" && node.operator === "#" && node.arguments[0]?.type === "ReferenceIdentifier");

const textOf = (node: AstExpression, formula: string): string => {
  // The parser's place of "F2#" is that of "#" alone: take in the operand.
  const operand = node.type === "UnaryExpression" ? node.arguments[0]?.loc : undefined;
  const [from = 0, to = 0] = node.loc ?? [];
  return formula.slice(Math.min(from, operand?.[0] ?? from), to);
};

const childrenOf = (node: AstExpression): readonly (AstExpression | null)[] => {
  switch (node.type) {
    case "CallExpression":
    case "BinaryExpression":
    case "UnaryExpression":
      return node.arguments as readonly (AstExpression | null)[];
    case "LetExpression":
      return [...node.declarations.map(({ init }) => init), node.body].filter(Boolean) as AstExpression[];
    case "LambdaExpression":
      return node.body ? [node.body as AstExpression] : [];
    default:
      return [];
  }
};
