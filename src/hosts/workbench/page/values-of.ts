import { parseA1Ref, parseStructRef, type RangeA1 } from "@borgar/fx";
import type { Range } from "../../../definition/cells";
import type { Book } from "../../engine/book";
import type { OpenBook } from "./open-book";

/** The values of a reference as it stands in a formula of `sheet`: a range, a name, a table's column. */
export const valuesOf = ({ asRead: book, view, grid }: OpenBook, reference: string, sheet: string): Range => {
  if (!book || !view) throw new Error("No workbook is open.");
  const plain = sheet.replace(/^'|'$/g, "").replaceAll("''", "'");
  const found = blockOf(book, reference, plain, 0);
  const size = grid.api.getActiveWorkbook()?.getSheetByName(found.sheet);
  if (!size) throw new Error(`There is no sheet "${found.sheet}".`);
  const { top, left, bottom, right } = found.range;
  const [fromRow, toRow] = [top ?? 0, bottom ?? size.getMaxRows() - 1];
  const [fromColumn, toColumn] = [left ?? 0, right ?? size.getMaxColumns() - 1];
  return Array.from({ length: toRow - fromRow + 1 }, (_, r) =>
    Array.from({ length: toColumn - fromColumn + 1 }, (_, c) =>
      view.valueAt({ sheet: found.sheet, row: fromRow + r, column: fromColumn + c }),
    ),
  );
};

interface Found {
  readonly sheet: string;
  readonly range: RangeA1;
}

const blockOf = (book: Book, reference: string, sheet: string, depth: number): Found => {
  const parsed = parseA1Ref(reference);
  if (parsed && "range" in parsed) return { sheet: parsed.context?.at(-1) ?? sheet, range: parsed.range };
  const name = book.names?.find((known) => known.name.toLowerCase() === reference.toLowerCase());
  // A name may stand for a name; a circle of them ends here.
  if (name && depth < 8) return blockOf(book, name.formula.replace(/^=/, ""), sheet, depth + 1);
  const column = tableColumn(book, reference);
  if (column) return column;
  throw new Error(`${reference} is no range of cells in this workbook.`);
};

const tableColumn = (book: Book, reference: string): Found | undefined => {
  const struct = parseStructRef(reference);
  if (!struct?.table || struct.columns?.length !== 1 || struct.sections?.length) return undefined;
  const wanted = struct.columns[0]?.toLowerCase();
  for (const { name, tables = [] } of book.sheets) {
    const table = tables.find((candidate) => candidate.name.toLowerCase() === struct.table?.toLowerCase());
    const place = table?.columns.findIndex((column) => column.toLowerCase() === wanted) ?? -1;
    if (!table || place < 0) continue;
    const top = table.block.row + (table.heading === false ? 0 : 1);
    const bottom = table.block.row + table.block.rows - 1 - (table.totals ? 1 : 0);
    const at = table.block.column + place;
    return { sheet: name, range: { top, bottom, left: at, right: at } };
  }
  return undefined;
};
