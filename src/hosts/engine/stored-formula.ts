import { isFunction, type Node, type Token } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import { NEW_EXCEL_FUNCTIONS } from "@univerjs/engine-formula";
import type { SheetCell } from "./book";
import { type Edit, edited } from "./formula-edits";
import { localNames, parsed, visit } from "./formula-tree";
import { oneCellEdits } from "./one-cell";
import { ADD_IN, bare, type Spelling } from "./spelling";

// How .xlsx files write formulas, [MS-XLSX] section 2.2.2 and what public reports of real saves show: functions younger than the format
// wear _xlfn. (FILTER and SORT also _xlws.), the names of LET and LAMBDA _xlpm., an add-in's functions _xldudf_ with every dot an
// underscore; F2# is ANCHORARRAY(F2), @F2:F9 is SINGLE(F2:F9). A bare add-in name in a file is never bound by Excel.

/** A formula of a file as it is typed, with "=". */
export const typedFormula = (stored: string, spelling: Spelling): string => {
  const formula = `=${stored}`;
  if (!/_xl|\bbimetal/i.test(formula)) return formula;
  const words: Word[] = [];
  for (const token of tokenize(formula)) {
    let { value } = token;
    if (isFunction(token) || token.type === "range_named") value = bare(value);
    if (isFunction(token)) {
      value = spelling.typed(value) ?? value;
      // A file moved between machines may name a workbook before an add-in's function: "[2]!_xldudf_…", "Other.xla!_xldudf_…".
      if (token.value.toLowerCase().startsWith(ADD_IN) && words.at(-1)?.value === "!") words.splice(-2);
    }
    words.push({ type: token.type, value });
  }
  return withOperators(words);
};

/** Whether a spreadsheet finds every function of ours in a formula of a file: a bare name it never binds, nor one behind a foreign workbook's. */
export const isBound = (stored: string, spelling: Spelling): boolean =>
  tokenize(`=${stored}`).every((token, place, tokens) => {
    if (!isFunction(token) || spelling.typed(bare(token.value)) === undefined) return true;
    return token.value.toLowerCase().startsWith(ADD_IN) && tokens[place - 1]?.value !== "!";
  });

interface Word {
  readonly type: string;
  readonly value: string;
}

/** ANCHORARRAY(F2) → F2#, SINGLE(F2:F9) → @F2:F9. */
const withOperators = (words: readonly Word[]): string => {
  const out: string[] = [];
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as Word;
    const name = word.type === "func" ? word.value.toUpperCase() : "";
    const inner = words[i + 2];
    const simple =
      words[i + 1]?.value === "(" && words[i + 3]?.value === ")" && inner && /^(range|structured)/.test(inner.type);
    if (simple && name === "ANCHORARRAY") out.push(`${inner.value}#`);
    else if (simple && name === "SINGLE") out.push(`@${inner.value}`);
    else {
      out.push(word.value);
      continue;
    }
    i += 3;
  }
  return out.join("");
};

/** A typed formula as files write it, without "=". */
export const storedFormula = (typed: string, spelling: Spelling): string => {
  const tokens = tokenize(typed, { withLocation: true });
  const edits: Edit[] = [];
  const locals = localNames(tokens);
  for (const token of tokens) {
    const [at = 0, end = 0] = token.loc ?? [];
    const drop = end - at;
    if (isFunction(token)) {
      const own = spelling.stored(token.value);
      const young = youngSpelling(token.value.toUpperCase());
      if (own ?? young) edits.push({ at, drop, put: own ?? young ?? "" });
      else if (locals.has(token.value.toLowerCase())) edits.push({ at, drop, put: `_xlpm.${token.value}` });
    } else if (token.type === "range_named" && locals.has(token.value.toLowerCase()))
      edits.push({ at, drop, put: `_xlpm.${token.value}` });
  }
  edits.push(...operatorEdits(tokens));
  return edited(typed, edits).replace(/^=/, "");
};

const alsoYoung = ["AGGREGATE", "CONCAT", "LAMBDA", "LET", "ANCHORARRAY", "SINGLE", "SCAN", "ISOMITTED", "TRIMRANGE"];
const youngSpelling = (name: string): string | undefined => {
  if (name === "FILTER" || name === "SORT") return `_xlfn._xlws.${name}`;
  return NEW_EXCEL_FUNCTIONS.has(name as never) || alsoYoung.includes(name) ? `_xlfn.${name}` : undefined;
};

/**
 * Whether a formula must be stored as a dynamic array, because its answer may fill several cells or its author meant whole ranges:
 * stored plainly, a spreadsheet would put an `@` before what it wants one value of.
 */
export const isDynamic = (
  { formula = "", spill }: Pick<SheetCell, "formula" | "spill">,
  spelling: Spelling,
): boolean => {
  if (spill || spelling.isOurs(formula)) return true;
  const tokens = tokenize(formula, { withLocation: true });
  const tree = parsed(tokens);
  return (
    tokens.some((token) => isFunction(token) && youngSpelling(token.value.toUpperCase()) !== undefined) ||
    tokens.some(({ value }) => value === "#" || value === "@" || value === "{") ||
    (tree !== undefined && oneCellEdits(tree, true).length > 0)
  );
};

const operatorEdits = (tokens: readonly Token[]): Edit[] => {
  const edits: Edit[] = [];
  visit(parsed(tokens), (node) => {
    const { type, operator, arguments: operands, loc } = node as Node & { operator?: string; arguments?: Node[] };
    const [from, to] = loc ?? [];
    if (type !== "UnaryExpression" || from === undefined || to === undefined) return;
    // A node ends before the parentheses that close around it, so what is put at its end is, where it matters, the same there and behind them.
    const [start = from, end = to] = operands?.[0]?.loc ?? [];
    if (operator === "#")
      edits.push({ at: start, put: "_xlfn.ANCHORARRAY(" }, { at: end, put: ")" }, { at: to - 1, drop: 1, put: "" });
    if (operator === "@") edits.push({ at: from, drop: 1, put: "_xlfn.SINGLE(" }, { at: to, put: ")" });
  });
  return edits;
};
