import { type Cell, CellError } from "../../../definition/cells";
import { sayCellOf } from "../place";
import type { WrittenCell } from "./sheet-walk";
import { escapeAttribute, escapeText, quoteAttribute } from "./xml";

/** Errors that a file may hold (ECMA-376 part 1, 18.18.11 and CT_Cell); younger ones need records of their own, so #VALUE! stands for them. */
export const fileErrors: ReadonlySet<string> = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
]);

/** A cell's value as a file holds a formula's answer: the type and the element. */
export const valueText = (value: Cell): { type: string | undefined; element: string } => {
  if (value === null) return { type: undefined, element: "" };
  if (value instanceof CellError) {
    const code = fileErrors.has(value.code) ? value.code : "#VALUE!";
    return { type: "e", element: `<v>${code}</v>` };
  }
  if (typeof value === "boolean") return { type: "b", element: `<v>${value ? 1 : 0}</v>` };
  if (typeof value === "number") return { type: undefined, element: `<v>${value}</v>` };
  return { type: "str", element: textElement("v", value) };
};

/** As spreadsheets write it: else a reader may take blanks at the ends, and ends of lines, for no part of the text. */
export const textElement = (name: "v" | "t", text: string): string =>
  `<${name}${/^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : ""}>${escapeText(text)}</${name}>`;

export const tag = (name: string, attributes: Readonly<Record<string, string | undefined>>, close = ">"): string =>
  `<${name}${Object.entries(attributes)
    .map(([key, value]) => (value === undefined ? "" : ` ${key}="${escapeAttribute(value)}"`))
    .join("")}${close}`;

/** A tag that stood in a file, with attributes as they were read. */
export const keptTag = (name: string, attributes: Readonly<Record<string, string | undefined>>, close = ">"): string =>
  `<${name}${Object.entries(attributes)
    .map(([key, value]) => (value === undefined ? "" : ` ${key}="${quoteAttribute(value)}"`))
    .join("")}${close}`;

/** What is to become of a cell's formula. */
export interface FormulaChange {
  /** The cells that it fills; left out, those that it filled before. */
  readonly ref?: string | undefined;
  /** Its whole spelling; and the `cm` of a formula that becomes a dynamic array. */
  readonly anew?: { readonly text: string; readonly mark?: number | undefined } | undefined;
  /** Its value alone stays, and no mark of a dynamic array. */
  readonly gone?: boolean;
}

/** A written cell with another value; whatever else stands in it (its style, its formula, what follows) stays as it is. */
export const cellWith = (xml: string, written: WrittenCell, value: Cell, change?: FormulaChange): string => {
  const { open, formula } = written;
  const { type, element } = valueText(value);
  // A value's own metadata (vm) belongs to the value that goes.
  const { t: _, vm: __, ...kept } = open.attributes;
  const mark = change?.anew?.mark;
  const isGone = change?.gone === true;
  const attributes = { ...kept, t: type, ...(isGone ? { cm: undefined } : mark !== undefined && { cm: String(mark) }) };
  const rest = open.isSelfClosing ? "" : remainder(xml, written);
  const inner = `${formula && !isGone ? formulaElement(xml, formula, change) : ""}${element}${rest}`;
  return inner === "" ? keptTag("c", attributes, "/>") : `${keptTag("c", attributes)}${inner}</c>`;
};

const formulaElement = (
  xml: string,
  formula: NonNullable<WrittenCell["formula"]>,
  change: FormulaChange | undefined,
): string => {
  const { attributes, open, from, to } = formula;
  const ref = change?.ref ?? attributes.ref;
  const anew = change?.anew;
  if (anew?.mark !== undefined) return `${tag("f", { t: "array", ref })}${escapeText(anew.text)}</f>`;
  if (anew) return `${keptTag("f", { ...attributes, ref })}${escapeText(anew.text)}</f>`;
  if (attributes.ref === ref) return xml.slice(from, to);
  return keptTag("f", { ...attributes, ref }, open.isSelfClosing ? "/>" : ">") + xml.slice(open.to, to);
};

/** A cell whose formula was written out in another, with words of its own; all else stays. */
export const unshared = (
  xml: string,
  { open, end }: WrittenCell,
  { from, to, attributes }: NonNullable<WrittenCell["formula"]>,
  text: string,
): string => {
  const { t: _, si: __, ref: ___, ...kept } = attributes;
  return `${xml.slice(open.from, from)}${keptTag("f", kept)}${escapeText(text)}</f>${xml.slice(to, end)}`;
};

/** What stands in a cell beside its formula and value: extensions of later versions. */
export const remainder = (xml: string, { open, end, formula, value, inline }: WrittenCell): string => {
  const close = xml.lastIndexOf("<", end - 1);
  let at = open.to;
  let rest = "";
  const pieces = [formula, value, inline].filter((piece) => piece !== undefined).sort((a, b) => a.from - b.from);
  for (const { from, to } of pieces) {
    rest += xml.slice(at, from);
    at = to;
  }
  return (rest + xml.slice(at, close)).trim();
};

/** A cell that did not stand in the file before. */
export const newCell = (row: number, column: number, value: Cell): string => {
  const { type, element } = valueText(value);
  return `${tag("c", { r: sayCellOf({ row, column }), t: type })}${element}</c>`;
};
