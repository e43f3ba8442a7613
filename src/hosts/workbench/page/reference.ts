import { parseA1Ref, type RangeA1 } from "@borgar/fx";
import type { Book } from "../../engine/book";
import type { Place } from "../../engine/place";
import { tableCells } from "../../engine/table-reference";
import type { OpenBook } from "./open-book";

/** A reference followed to its cells. Edges that are not told ("B:B") are null. */
interface Found {
  readonly sheet: string;
  readonly range: RangeA1;
}

/** The cells of a reference as it stands in a formula of `sheet`: a range, a name, a table's column, the whole of an answer ("F2#"). */
export const follow = (open: OpenBook, reference: string, sheet: string): Found => {
  const { asRead, view } = open;
  if (!asRead || !view) throw new Error("No workbook is open.");
  const found = cellsOf(asRead, reference.replace(/#$/, ""), plainSheet(sheet), 0);
  if (!reference.endsWith("#")) return found;
  const { top, left } = found.range;
  const spill = top != null && left != null && view.spillAt({ sheet: found.sheet, row: top, column: left });
  if (!spill) return found;
  const { row, column, rows, columns } = spill;
  return { ...found, range: { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 } };
};

const cellsOf = (book: Book, reference: string, sheet: string, depth: number): Found => {
  const parsed = parseA1Ref(reference);
  if (parsed && "range" in parsed) return { sheet: parsed.context?.at(-1) ?? sheet, range: parsed.range };
  const name = book.names?.find((known) => known.name.toLowerCase() === reference.toLowerCase());
  // A name may stand for a name; a circle of them ends here.
  if (name && depth < 8) return cellsOf(book, name.formula.replace(/^=/, ""), sheet, depth + 1);
  const nowhere: Place = { sheet, row: -1, column: -1 };
  const table = reference.includes("[") ? tableCells(reference, book, nowhere) : undefined;
  if (table && "cells" in table) return cellsOf(book, table.cells, sheet, depth + 1);
  throw new Error(`${reference} is no range of cells in this workbook.`);
};

/** "'Bench log'" as the sheet is called: Bench log. */
const plainSheet = (sheet: string): string => sheet.replace(/^'|'$/g, "").replaceAll("''", "'");
