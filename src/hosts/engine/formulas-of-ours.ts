import { isFunction, type Node } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import type { Book } from "./book";
import { localNames, parsed, visit } from "./formula-tree";
import { readPlace, sayPlace } from "./place";
import type { Spelling } from "./spelling";

/**
 * The places of the formulas that need functions of ours: they call one, by itself or by a name that stands for one, or they read the
 * whole answer of such a formula by its first cell (`F2#`), which is no answer any more once its value alone stands there. Places in
 * `except` are no such places.
 */
export const formulasOfOurs = (
  book: Book,
  spelling: Spelling,
  except: ReadonlySet<string> = new Set(),
): ReadonlySet<string> => {
  const found = new Set<string>();
  const names = new Set<string>();
  const keyOf = (name: string, sheet = "") => `${sheet}\n${name}`.toLowerCase();
  const known = new Set((book.names ?? []).map(({ name, sheet }) => keyOf(name, sheet)));
  /** A sheet's own name comes before the workbook's. */
  const isOurName = (name: string, sheet: string) =>
    names.has(known.has(keyOf(name, sheet)) ? keyOf(name, sheet) : keyOf(name));
  const needsOurs = (formula: string, sheet: string): boolean =>
    spelling.isOurs(formula) ||
    (names.size > 0 && namesIn(formula).some((name) => isOurName(name, sheet))) ||
    answersReadBy(formula, sheet).some((place) => found.has(place));
  /** One round; whether it found more. Names of names, and answers of answers, take a round each. */
  const look = (): boolean => {
    const before = found.size + names.size;
    for (const { name, formula, sheet } of book.names ?? [])
      if (needsOurs(`=${formula}`, sheet ?? "")) names.add(keyOf(name, sheet));
    for (const { name: sheet, cells } of book.sheets)
      for (const { row, column, formula } of cells) {
        const place = formula === undefined ? "" : sayPlace({ sheet, row, column });
        if (formula === undefined || found.has(place) || except.has(place)) continue;
        if (needsOurs(formula, sheet)) found.add(place);
      }
    return found.size + names.size > before;
  };
  while (look());
  return found;
};

/** The words of a formula that may be names of the workbook; one that stands for a LAMBDA is called as a function. */
const namesIn = (formula: string): string[] => {
  const tokens = tokenize(formula);
  const locals = localNames(tokens);
  return tokens.flatMap((token) =>
    (isFunction(token) || token.type === "range_named") && !locals.has(token.value.toLowerCase())
      ? [token.value.replace(/^.*!/, "")]
      : [],
  );
};

/** The first cells of the answers that a formula reads whole. */
const answersReadBy = (formula: string, sheet: string): string[] => {
  const places: string[] = [];
  if (!formula.includes("#")) return places;
  visit(parsed(tokenize(formula, { withLocation: true })), (node) => {
    const { type, operator, arguments: [operand] = [] } = node as Node & { operator?: string; arguments?: Node[] };
    if (type !== "UnaryExpression" || operator !== "#") return;
    const place = readPlace(String((operand as { value?: unknown } | undefined)?.value ?? ""), sheet);
    if (place) places.push(sayPlace(place));
  });
  return places;
};
