import { type Cell, CellError } from "../../../definition/cells";
import { sayCellOf } from "../place";
import type { WrittenCell } from "./sheet-walk";
import { escapeAttribute, escapeText } from "./xml";

/** Errors that a file may hold (ECMA-376 part 1, 18.18.11 and CT_Cell); younger ones need records of their own, so #VALUE! stands for them. */
const fileErrors: ReadonlySet<string> = new Set(["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"]);

/** A cell's value as a file holds a formula's answer: the type and the element. */
export const valueText = (value: Cell): { type: string | undefined; element: string } => {
  if (value === null) return { type: undefined, element: "" };
  if (value instanceof CellError) {
    const code = fileErrors.has(value.code) ? value.code : "#VALUE!";
    return { type: "e", element: `<v>${code}</v>` };
  }
  if (typeof value === "boolean") return { type: "b", element: `<v>${value ? 1 : 0}</v>` };
  if (typeof value === "number") return { type: undefined, element: `<v>${value}</v>` };
  return { type: "str", element: `<v>${escapeText(value)}</v>` };
};

export const tag = (name: string, attributes: Readonly<Record<string, string | undefined>>, close = ">"): string =>
  `<${name}${Object.entries(attributes)
    .map(([key, value]) => (value === undefined ? "" : ` ${key}="${escapeAttribute(value)}"`))
    .join("")}${close}`;

/** What is to become of a cell's formula: its extent, or its whole spelling when it is written anew as a dynamic array. */
export interface FormulaChange {
  readonly ref: string;
  readonly anew?: { readonly text: string; readonly mark: string };
}

/** A written cell with another value; whatever else stands in it (its style, its formula, what follows) stays as it is. */
export const cellWith = (xml: string, written: WrittenCell, value: Cell, change?: FormulaChange): string => {
  const { open, formula, end } = written;
  const { type, element } = valueText(value);
  // A value's own metadata (vm) belongs to the value that goes.
  const { t: _, vm: __, ...kept } = open.attributes;
  const attributes = { ...kept, t: type, ...(change?.anew && { cm: change.anew.mark }) };
  const opening = tag("c", attributes);
  const rest = open.isSelfClosing ? "" : remainder(xml, written);
  const inner = `${formula ? formulaElement(xml, formula, change) : ""}${element}${rest}`;
  return inner === "" && open.isSelfClosing === (xml.slice(end - 2, end) === "/>") && inner === ""
    ? tag("c", attributes, "/>")
    : `${opening}${inner}</c>`;
};

const formulaElement = (
  xml: string,
  formula: NonNullable<WrittenCell["formula"]>,
  change: FormulaChange | undefined,
): string => {
  const { attributes, open, from, to } = formula;
  if (change?.anew) return `${tag("f", { t: "array", ref: change.ref })}${escapeText(change.anew.text)}</f>`;
  if (!change || attributes.ref === change.ref) return xml.slice(from, to);
  return tag("f", { ...attributes, ref: change.ref }, open.isSelfClosing ? "/>" : ">") + xml.slice(open.to, to);
};

/** What stands in a cell beside its formula and value: extensions of later versions. */
const remainder = (xml: string, { open, end, formula, value, inline }: WrittenCell): string => {
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
