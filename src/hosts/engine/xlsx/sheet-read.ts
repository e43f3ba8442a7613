import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { type Cell, CellError } from "../../../definition/cells";
import type { Sheet, SheetCell, Style } from "../book";
import { type Block, readBlock, sayCellOf } from "../place";
import type { Spelling } from "../spelling";
import { typedFormula } from "../stored-formula";
import { type WrittenCell, walkSheet } from "./sheet-walk";
import { UnreadableWorkbook } from "./unreadable";
import { unescapeText } from "./xml";

/** What a sheet's part refers to. */
interface Shelf {
  readonly texts: readonly string[];
  readonly styles: readonly Style[];
  /** The values of `cm` that mark a dynamic array. */
  readonly dynamicMarks: ReadonlySet<number>;
  readonly spelling: Spelling;
  /** Hears every `cm`. */
  readonly onMark?: (mark: number) => void;
}

export const readSheet = (name: string, xml: string, part: string, shelf: Shelf): Sheet => {
  const cells: SheetCell[] = [];
  const shared = new Map<string, string>();
  const widths = new Map<number, number>();
  const choices: { block: Block; words: string[] }[] = [];
  let frozen: Sheet["frozen"];
  let list: { sqref: string; text: string | undefined } | undefined;
  let answered = 0;
  walkSheet(xml, part, {
    cell: (written) => {
      if ((written.formula?.text.length ?? 0) > MOST_FORMULA)
        throw new UnreadableWorkbook(`${part} has a formula of more characters than any spreadsheet takes.`);
      if (written.open.attributes.cm !== undefined) shelf.onMark?.(Number(written.open.attributes.cm));
      checkBlock(written, part);
      const cell = readCell(written, shared, shelf);
      answered += (cell.spill?.rows ?? 0) > 1 ? (cell.spill?.rows ?? 0) : 0;
      if (answered > MOST_SPILLED_ROWS)
        throw new UnreadableWorkbook(`${part} has array formulas over too many rows for this program.`);
      if (cell.value !== null || cell.formula !== undefined || cell.style) cells.push(cell);
    },
    element: ({ name: element, attributes }) => {
      if (element === "col" && attributes.customWidth !== "0" && attributes.width) {
        const first = Number(attributes.min) - 1;
        const last = Math.min(Number(attributes.max) - 1, first + 255);
        for (let column = first; column <= last; column++) widths.set(column, Number(attributes.width));
      }
      if (element === "pane" && attributes.state?.startsWith("frozen"))
        frozen = { rows: Number(attributes.ySplit ?? 0), columns: Number(attributes.xSplit ?? 0) };
      if (element === "dataValidation")
        list = attributes.type === "list" ? { sqref: attributes.sqref ?? "", text: undefined } : undefined;
      if (element === "formula1" && list) list.text = "";
    },
    elementText: (text) => {
      if (list?.text !== undefined) list.text += text;
    },
    elementEnd: (element) => {
      if (element !== "dataValidation" || !list) return;
      const words = /^"(.*)"$/s.exec(list.text ?? "")?.[1]?.split(",");
      for (const range of words ? list.sqref.split(" ") : []) {
        const block = readBlock(range);
        if (block) choices.push({ block, words: words ?? [] });
      }
      list = undefined;
    },
  });
  return { name, cells, widths, frozen, choices };
};

const MOST_SPILLED_ROWS = 5_000_000;
/** A formula may have 8192 characters as it is typed; prefixes of files come on top. */
export const MOST_FORMULA = 32_768;

/** An array formula fills cells from its own on; else what stands in others would be taken for its answer, and be overwritten. */
const checkBlock = ({ row, column, formula }: WrittenCell, part: string): void => {
  if (formula?.attributes.t !== "array" || formula.attributes.ref === undefined) return;
  const block = readBlock(formula.attributes.ref);
  if (block?.row !== row || block.column !== column)
    throw new UnreadableWorkbook(
      `${part} has an array formula in ${sayCellOf({ row, column })} that fills ${formula.attributes.ref} instead.`,
    );
};

const readCell = (written: WrittenCell, shared: Map<string, string>, shelf: Shelf): SheetCell => {
  const { row, column, open, formula } = written;
  const style = shelf.styles[Number(open.attributes.s ?? -1)];
  const cell = {
    row,
    column,
    value: writtenValue(written, shelf),
    ...(style && Object.keys(style).length > 0 && { style }),
  };
  if (!formula || formula.attributes.t === "dataTable") return cell;
  const text = formulaText(written, shared);
  if (text === undefined) return cell;
  const typed = typedFormula(text, shelf.spelling);
  const { t: kind, si } = formula.attributes;
  if (kind !== "array")
    return { ...cell, formula: typed, stored: "single", ...(kind === "shared" && si !== undefined && { shared: si }) };
  const block = readBlock(formula.attributes.ref ?? "") ?? { rows: 1, columns: 1 };
  const isDynamic = shelf.dynamicMarks.has(Number(open.attributes.cm ?? 0));
  const spill = { rows: block.rows, columns: block.columns };
  return { ...cell, formula: typed, spill, ...(!isDynamic && { stored: "fixed" as const }) };
};

/** A formula that is shared among cells is written out once and moves with the cell. */
const formulaText = ({ row, column, formula }: WrittenCell, shared: Map<string, string>): string | undefined => {
  const { text = "", attributes = {} } = formula ?? {};
  if (attributes.t !== "shared" || attributes.si === undefined) return text === "" ? undefined : unescapeText(text);
  const here = sayCellOf({ row, column });
  if (text !== "") {
    shared.set(attributes.si, translateFormulaToR1C1(text, here));
    return text;
  }
  const master = shared.get(attributes.si);
  return master === undefined ? undefined : translateFormulaToA1(master, here);
};

const writtenValue = ({ open, value, inline }: WrittenCell, { texts }: Shelf): Cell => {
  const type = open.attributes.t ?? "n";
  if (type === "inlineStr") return inline ? unescapeText(inline.text) : null;
  if (value === undefined) return null;
  const { text } = value;
  if (type === "s") return texts[Number(text)] ?? null;
  if (type === "str") return unescapeText(text);
  if (type === "b") return text === "1" || text === "true";
  if (type === "e") return new CellError(text);
  if (type === "d") return dateSerial(text);
  return text.trim() === "" || !Number.isFinite(Number(text)) ? null : Number(text);
};

/** An ISO date as days since the last day of 1899, as cells count them. */
const dateSerial = (text: string): Cell => {
  const time = Date.parse(/[zZ]|[+-]\d\d:?\d\d$/.test(text) || !text.includes("T") ? text : `${text}Z`);
  return Number.isFinite(time) ? time / 86_400_000 + 25_569 : text;
};
