import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { around, type Block, sayCellOf } from "../place";
import { AroundRows } from "./around-rows";
import { type Cells, cellSplices, putCell } from "./cell-splices";
import { keptTag, remainder, tag, textElement, unshared, valueText } from "./cell-text";
import type { CellEdit, Held, RowWish, SheetEdits } from "./edits";
import type { WrittenCell } from "./sheet-walk";
import { spliced } from "./splice";
import { formulaText, type Wording } from "./write-sheet";
import { type Opened, unescapeText } from "./xml";

/** How a changed cell says what stands elsewhere in its package. */
interface EditWording extends Omit<Wording, "numberOf"> {
  /** The number of the look that differs from the one of number `base` as `to` does from `from`. */
  changed(base: number, looks: NonNullable<CellEdit["looks"]>): number;
}

/** Text that stands in the cell itself, so that the list of texts stays as it is. */
export const inlineText = (text: string): { type: string; element: string } => ({
  type: "inlineStr",
  element: `<is>${textElement("t", text)}</is>`,
});

/** A sheet's part as it is to be. */
interface EditedSheet {
  readonly xml: string;
  /** Whether a formula came or went. */
  readonly hasOtherFormulas: boolean;
}

/** A sheet's part in which some cells, rows and columns are others; every other character stays. */
export const editSheet = (xml: string, part: string, edits: SheetEdits, wording: EditWording): EditedSheet => {
  const outside = new AroundRows();
  const shared = new Map<string, string>();
  let filled: Block | undefined;
  let hasOtherFormulas = edits.cells.some(({ holds }) => holds?.formula !== undefined);

  const looked = (base: string | undefined, { looks }: CellEdit): string | undefined =>
    looks ? String(wording.changed(Number(base ?? 0), looks)) : base;

  /** Formulas that are written out in a cell that changes are written out in their own. */
  const withOwnWords = (written: WrittenCell, isChanged: boolean): string | undefined => {
    const { formula, row, column } = written;
    const { t, si } = formula?.attributes ?? {};
    if (!formula || t !== "shared" || si === undefined) return undefined;
    const here = sayCellOf({ row, column });
    if (formula.text !== "" && isChanged) shared.set(si, translateFormulaToR1C1(unescapeText(formula.text), here));
    else if (formula.text !== "") shared.delete(si);
    const master = formula.text === "" ? shared.get(si) : undefined;
    return master === undefined || isChanged
      ? undefined
      : unshared(xml, written, formula, translateFormulaToA1(master, here));
  };

  const splices = cellSplices(
    xml,
    part,
    { wanted: byPlace(edits.cells), rows: edits.rows?.keys() ?? [] },
    {
      fresh: ({ row, column }, edit, open) => {
        const { holds = { value: null } } = edit;
        const { attributes, inner } = held(holds, { row, column }, wording);
        if (inner === "" && !edit.looks) return "";
        const said = {
          r: sayCellOf({ row, column }),
          s: looked(styleOfRow(open) ?? outside.styleOfColumn(column), edit),
        };
        const one = { row, column, rows: 1, columns: 1 };
        filled = filled ? around(filled, one) : one;
        return inner === "" ? tag("c", said, "/>") : `${tag("c", { ...said, ...attributes })}${inner}</c>`;
      },
      instead: (written, edit) => {
        const { open, end, row, column } = written;
        const plain = withOwnWords(written, edit?.holds !== undefined);
        if (!edit) return plain;
        const s = looked(open.attributes.s, edit);
        if (!edit.holds) {
          const opening = keptTag("c", { ...open.attributes, s }, open.isSelfClosing ? "/>" : ">");
          return opening + (plain ?? xml.slice(open.from, end)).slice(open.to - open.from);
        }
        if (written.formula) hasOtherFormulas = true;
        // A value's own metadata (vm) and a formula's (cm) belong to what goes.
        const { t: _, vm: __, cm: ___, ...kept } = open.attributes;
        const { attributes, inner } = held(edit.holds, { row, column }, wording);
        const all = inner + (open.isSelfClosing ? "" : remainder(xml, written));
        const said = { ...kept, s, ...attributes };
        return all === "" ? keptTag("c", said, "/>") : `${keptTag("c", said)}${all}</c>`;
      },
      rowSays: (row) => rowTag(edits.rows?.get(row)),
      outside,
    },
  );
  return { xml: spliced(xml, [...splices, ...outside.splices(edits, filled)]), hasOtherFormulas };
};

const held = (
  { value, formula, ...rest }: Held,
  place: Pick<WrittenCell, "row" | "column">,
  wording: EditWording,
): { attributes: Record<string, string | undefined>; inner: string } => {
  const isTyped = formula === undefined && typeof value === "string";
  const { type, element } = isTyped ? wording.textOf(value) : valueText(value);
  if (formula === undefined) return { attributes: { t: type }, inner: element };
  const { cm, text } = formulaText({ ...place, ...rest, value, formula }, wording);
  return { attributes: { t: type, cm }, inner: text + element };
};

const rowTag = ({ height, hidden }: RowWish = {}): Record<string, string | undefined> | undefined =>
  height === undefined && hidden === undefined
    ? undefined
    : {
        ...(height !== undefined && { ht: String(height), customHeight: "1" }),
        ...(hidden && { hidden: "1" }),
      };

const styleOfRow = (row: Opened | undefined): string | undefined =>
  /^(1|true)$/.test(row?.attributes.customFormat ?? "") ? row?.attributes.s : undefined;

const byPlace = (edits: readonly CellEdit[]): Cells<CellEdit> => {
  const rows = new Map<number, Map<number, CellEdit>>();
  for (const edit of edits) putCell(rows, edit, edit);
  return rows;
};
