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
  const names = new Map((book.names ?? []).map((name) => [keyOf(name.name, name.sheet), name]));
  /** A sheet's own name comes before the workbook's. */
  const named = (name: string, sheet: string) => [keyOf(name, sheet), keyOf(name)].find((key) => names.has(key)) ?? [];
  // Few names have to do with any of this, so mostly the formulas need not be searched for them.
  const areNamesAsked = [...names.values()].some(({ formula }) => formula.includes("#") || spelling.isOurs(formula));
  const found = new Set<string>();
  const readers = new Map<string, string[]>();
  const add = (key: string, formula: string, sheet: string): void => {
    if (spelling.isOurs(formula)) found.add(key);
    const read = [
      ...(areNamesAsked ? namesIn(formula).flatMap((name) => named(name, sheet)) : []),
      ...answersReadBy(formula, sheet),
    ];
    for (const one of read) {
      const own = readers.get(one);
      if (own) own.push(key);
      else readers.set(one, [key]);
    }
  };
  for (const [key, { formula, sheet = "" }] of names) add(key, `=${formula}`, sheet);
  for (const { name: sheet, cells } of book.sheets)
    for (const { row, column, formula } of cells) {
      const place = formula === undefined ? "" : sayPlace({ sheet, row, column });
      if (formula !== undefined && !except.has(place)) add(place, formula, sheet);
    }
  // A set gives what is added to it while it is gone through.
  for (const key of found) for (const reader of readers.get(key) ?? []) found.add(reader);
  for (const key of names.keys()) found.delete(key);
  return found;
};

/** No place is spelled so. */
const keyOf = (name: string, sheet = ""): string => `${sheet}\n${name}`.toLowerCase();

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
