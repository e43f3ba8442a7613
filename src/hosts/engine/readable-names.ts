import { parseA1Ref } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import type { Book, DefinedName } from "./book";
import { engineFormula, type Known } from "./engine-formula";

/** The workbook's names whose meaning the engine can read. The others are unknown to the formulas that use them. */
export const readableNames = (book: Book, hasFunction: Known["hasFunction"]): DefinedName[] => {
  const known = { hasFunction, ...knownNames(book.names ?? []) };
  return (book.names ?? []).flatMap((name) => {
    const place = { sheet: name.sheet ?? book.sheets[0]?.name ?? "", row: 0, column: 0 };
    const words = engineFormula({ ...place, value: null, formula: `=${name.formula}` }, place, book, known);
    return "formula" in words && !movesWithCell(words.formula) ? [{ ...name, formula: words.formula.slice(1) }] : [];
  });
};

/** A name without `$` stands for other cells in each cell that uses it. */
const movesWithCell = (formula: string): boolean =>
  tokenize(formula).some(({ type, value }) => {
    const reference = type.startsWith("range") && type !== "range_named" ? parseA1Ref(value) : undefined;
    if (!reference || !("range" in reference)) return false;
    const { top, left, $top, $left } = reference.range;
    return (top != null && !$top) || (left != null && !$left);
  });

export const knownNames = (names: readonly DefinedName[]): Pick<Known, "hasName" | "ownName"> => {
  const keyOf = (name: string, sheet = "") => `${sheet}\n${name}`.toLowerCase();
  const meanings = new Map(names.map(({ name, sheet, formula }) => [keyOf(name, sheet), formula]));
  return {
    hasName: (name) => meanings.has(keyOf(name)),
    ownName: (name, sheet) => meanings.get(keyOf(name, sheet)),
  };
};
