import { isFunction, type Token } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import type { Book, SheetCell } from "./book";
import { edited } from "./formula-edits";
import { localNames, parsed, visit } from "./formula-tree";
import { literalEdits, numberLiteral } from "./literal-edits";
import { isOfDates } from "./of-dates";
import { oneCellEdits } from "./one-cell";
import type { Place } from "./place";
import { isTable, tableCells } from "./table-reference";

/** A formula in words the grid engine knows, or a sentence that says why there are none. */
type EngineFormula = { readonly formula: string } | { readonly why: string };

/** What a formula may use: the engine's functions and ours, and what the names of the workbook stand for in a cell. */
export interface Known {
  readonly hasFunction: (name: string) => boolean;
  readonly meaning: (name: string, at: Place) => string | undefined;
}

/** Names of names of names may stand for very much. */
const MOST_CHARACTERS = 100_000;

/** Turns what the engine reads otherwise than a spreadsheet (table references, intersections, arrays of a fixed size) and refuses the rest. */
export const engineFormula = (
  cell: SheetCell & { formula: string },
  at: Place,
  book: Book,
  known: Known,
): EngineFormula => {
  const { formula, stored } = cell;
  let words = "";
  const tokens = tokenize(formula);
  const locals = localNames(tokens);
  for (const token of tokens) {
    const put = word(token, at, book, known, locals);
    if ("why" in put) return put;
    words += put.formula;
    if (words.length > MOST_CHARACTERS) return { why: "It is too long once its names are put in." };
  }
  const plain = tokenize(words, { withLocation: true });
  const tree = parsed(plain);
  if (!tree)
    return { why: `It cannot be read as a formula.${hasSemicolons(plain) ? " Arguments are parted by commas." : ""}` };
  let why: string | undefined;
  visit(tree, ({ type, ...node }) => {
    const { operator } = node as { operator?: string };
    if (type === "BinaryExpression" && operator === ",") why = "It joins separate ranges into one.";
    if (type === "BinaryExpression" && operator === " ") why = "It asks for the cells that two ranges share.";
  });
  if (why) return { why };
  const single = edited(words, [...oneCellEdits(tree, stored === "single"), ...literalEdits(tree, words)]);
  return { formula: stored === "fixed" ? fixedSize(single, cell.spill ?? { rows: 1, columns: 1 }) : single };
};

/** Semicolons outside an array constant, as many a sheet's own language parts arguments. */
const hasSemicolons = (tokens: readonly Token[]): boolean => {
  let depth = 0;
  return tokens.some(({ value }) => {
    if (value === "{" || value === "}") depth += value === "{" ? 1 : -1;
    return value === ";" && depth === 0;
  });
};

const word = (token: Token, at: Place, book: Book, known: Known, locals: ReadonlySet<string>): EngineFormula => {
  const { type, value } = token;
  const small = value.toLowerCase();
  if (book.countsFrom1904 && isOfDates(token))
    return { why: `The workbook counts its dates from 1904, and ${value} here from 1900.` };
  if (isFunction(token)) {
    if (known.hasFunction(value) || locals.has(small)) return { formula: value };
    const ours = `BIMETAL.${value.toUpperCase()}`;
    return { why: `The function ${value} is not known here${known.hasFunction(ours) ? `; write ${ours}` : ""}.` };
  }
  if (type === "context" || type === "context_quote" || (/^'?[^'!]*\[[^\]]*\]/.test(value) && /^range/.test(type)))
    return { why: `It refers to another workbook (${value}).` };
  if (/^range/.test(type) && /^('[^']*:[^']*'|[^'!]+:[^'!]+)!/.test(value))
    return { why: `It takes cells of several sheets at once (${value}).` };
  if (type === "structured" || (type === "range_named" && isTable(book, value))) {
    const found = tableCells(value, book, at);
    return "why" in found ? found : { formula: found.cells };
  }
  if (type === "range_named" && !locals.has(small)) {
    // The engine puts a name's meaning in its place without parentheses, and takes a name of one sheet for another's.
    const meant = known.meaning(value, at);
    return meant === undefined ? { why: `The name ${value} is not known here.` } : { formula: meant };
  }
  if (type === "number") return { formula: numberLiteral(value) };
  if (type === "unknown") return { why: `It cannot be read at "${value}".` };
  return { formula: value };
};

/** An array formula of the old kind fills its block whatever its size: a single row or column repeats, what is missing is #N/A. */
const fixedSize = (formula: string, { rows, columns }: { rows: number; columns: number }): string => {
  const inner = formula.slice(1);
  if (rows === 1 && columns === 1) return `=INDEX(${inner},1,1)`;
  const [a, h, w, i, j] = ["fixed_all", "fixed_rows", "fixed_columns", "fixed_row", "fixed_column"];
  const pick = `INDEX(${a},IF(${h}=1,1,${i}),IF(${w}=1,1,${j}))`;
  const inside = `AND(OR(${h}=1,${i}<=${h}),OR(${w}=1,${j}<=${w}))`;
  const each = `LAMBDA(${i},${j},IF(${inside},${pick},NA()))`;
  return `=LET(${a},${inner},${h},ROWS(${a}),${w},COLUMNS(${a}),MAKEARRAY(${rows},${columns},${each}))`;
};
