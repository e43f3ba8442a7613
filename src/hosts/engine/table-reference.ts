import { parseStructRef, stringifyA1Ref } from "@borgar/fx";
import type { Book, Table } from "./book";
import { isIn, type Place } from "./place";

/** A table reference ("Trials[current]", "[@drop]") as plain cells; a sentence that says why when there are none such. */
export const tableCells = (reference: string, book: Book, at: Place): { cells: string } | { why: string } => {
  const { table: name = "", columns = [], sections = [] } = parseStructRef(reference) ?? { table: reference };
  const found = findTable(book, name, at);
  if (!found) return { why: name ? `There is no table "${name}".` : `${reference} stands outside any table.` };
  const { table, sheet } = found;
  const places = columns.map((column) =>
    table.columns.findIndex((known) => known.toLowerCase() === column.toLowerCase()),
  );
  const missing = columns[places.indexOf(-1)];
  if (missing !== undefined) return { why: `The table "${table.name}" has no column "${missing}".` };
  const rows = rowsOf(table, sections, at.sheet === sheet ? at : undefined);
  if (!rows) return { why: `${reference} asks for a row that the table "${table.name}" does not have.` };
  const { column, columns: width } = table.block;
  const range = {
    top: rows.first,
    bottom: rows.last,
    left: column + (places.length ? Math.min(...places) : 0),
    right: column + (places.length ? Math.max(...places) : width - 1),
    $top: true,
    $bottom: true,
    $left: true,
    $right: true,
  };
  return { cells: stringifyA1Ref({ context: [sheet], range }) };
};

const findTable = (book: Book, name: string, at: Place): { table: Table; sheet: string } | undefined => {
  for (const sheet of book.sheets)
    for (const table of sheet.tables ?? [])
      if (name ? table.name.toLowerCase() === name.toLowerCase() : sheet.name === at.sheet && isIn(table.block, at))
        return { table, sheet: sheet.name };
  return undefined;
};

/** Whether a bare word names a table: `ROWS(Trials)`. */
export const isTable = (book: Book, name: string): boolean =>
  findTable(book, name, { sheet: "", row: -1, column: -1 }) !== undefined;

const rowsOf = (
  { block, heading = true, totals = false }: Table,
  sections: readonly string[],
  at: Place | undefined,
): { first: number; last: number } | undefined => {
  const end = block.row + block.rows - 1;
  const data = { first: block.row + (heading ? 1 : 0), last: end - (totals ? 1 : 0) };
  const parts = sections.map((section) => {
    if (section === "all") return { first: block.row, last: end };
    if (section === "headers") return heading ? { first: block.row, last: block.row } : undefined;
    if (section === "totals") return totals ? { first: end, last: end } : undefined;
    if (section === "this row")
      return at && at.row >= data.first && at.row <= data.last ? { first: at.row, last: at.row } : undefined;
    return data;
  });
  if (parts.length === 0) parts.push(data);
  if (parts.includes(undefined)) return undefined;
  const rows = parts as { first: number; last: number }[];
  return { first: Math.min(...rows.map(({ first }) => first)), last: Math.max(...rows.map(({ last }) => last)) };
};
