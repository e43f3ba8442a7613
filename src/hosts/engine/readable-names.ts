import { parseA1Ref, translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import type { Book, DefinedName } from "./book";
import { engineFormula, type Known } from "./engine-formula";
import { localNames } from "./formula-tree";
import { type Place, sayCellOf } from "./place";

/** Names of names of names: deeper than this nobody goes. */
const MOST_STEPS = 5;
/** Longer than any formula that a spreadsheet takes. */
const MOST_LENGTH = 8192;

/**
 * The workbook's names in the engine's words, names within them put in. Those whose meaning the engine cannot read are left out, and so
 * unknown to the formulas that use them.
 */
export const readableNames = (book: Book, hasFunction: Known["hasFunction"]): DefinedName[] => {
  let names = [...(book.names ?? [])];
  for (let step = 0; step < MOST_STEPS; step++) {
    const known = { hasFunction, meaning: meaningOf(names) };
    names = names.flatMap((name) => {
      const place = { sheet: name.sheet ?? book.sheets[0]?.name ?? "", row: 0, column: 0 };
      const words = engineFormula({ ...place, value: null, formula: `=${name.formula}` }, place, book, known);
      if (!("formula" in words) || words.formula.length > MOST_LENGTH) return [];
      return [{ ...name, formula: words.formula.slice(1) }];
    });
  }
  // What still holds a name leads back to itself, or is too deep; the engine would follow it without end.
  return names.filter(({ formula }) => !holdsName(formula));
};

const holdsName = (formula: string): boolean => {
  const tokens = tokenize(`=${formula}`);
  const locals = localNames(tokens);
  return tokens.some(({ type, value }) => type === "range_named" && !locals.has(value.toLowerCase()));
};

/** A name without `$` stands for other cells in each cell that uses it; files write what it stands for in A1. */
export const movesWithCell = (formula: string): boolean =>
  tokenize(`=${formula}`).some(({ type, value }) => {
    const reference = type.startsWith("range") && type !== "range_named" ? parseA1Ref(value) : undefined;
    if (!reference || !("range" in reference)) return false;
    const { top, left, $top, $left } = reference.range;
    return (top != null && !$top) || (left != null && !$left);
  });

const movedTo = (formula: string, at: Place): string =>
  translateFormulaToA1(translateFormulaToR1C1(formula, "A1"), sayCellOf(at));

/** What a name stands for in a cell: the sheet's own meaning before the workbook's; in parentheses unless it is a plain reference. */
export const meaningOf = (names: readonly DefinedName[]): Known["meaning"] => {
  const keyOf = (name: string, sheet = "") => `${sheet}\n${name}`.toLowerCase();
  const meanings = new Map(names.map(({ name, sheet, formula }) => [keyOf(name, sheet), enclosed(formula)]));
  return (name, at) => {
    const meaning = meanings.get(keyOf(name, at.sheet)) ?? meanings.get(keyOf(name));
    return meaning !== undefined && movesWithCell(meaning) ? movedTo(meaning, at) : meaning;
  };
};

/** A name's meaning as it can stand anywhere in a formula. */
export const enclosed = (formula: string): string => (tokenize(`=${formula}`).length === 2 ? formula : `(${formula})`);
