import { type Cell, CellError } from "../../definition/cells";
import { sayNumber } from "../../metrology/say";
import type { Book, Sheet, SheetCell } from "../engine/book";
import type { GridView } from "../engine/grid-view";
import { noFormula } from "../engine/no-formula";
import { sayCellOf } from "../engine/place";

/** The columns that tell a trial, by the words their headings begin with, in the order they are shown. */
const telling = ["breaker", "current", "time", "outcome", "shortest", "longest", "verdict"];
const mostColumns = 8;

/** A sheet of trials as rows of text, read by its own headings. */
export interface LogTable {
  readonly sheet: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** By column: numbers stand to the right. */
  readonly isNumeric: readonly boolean[];
  /** "H12: rating: …": the sentence of each refusal in the rows. */
  readonly refusals: readonly string[];
}

/** The sheet whose headings tell a trial best; undefined when no sheet has headings. */
export const logTable = (book: Book, view: GridView): LogTable | undefined => {
  const logs = book.sheets.map((sheet) => ({ sheet, ...headingsOf(sheet) }));
  const best = logs.sort((a, b) => b.told - a.told || b.columns.length - a.columns.length)[0];
  return best && best.columns.length > 0 ? tableOf(best, view) : undefined;
};

interface Headings {
  readonly row: number;
  /** How many of the telling words stand in it. */
  readonly told: number;
  readonly columns: readonly { readonly column: number; readonly heading: string }[];
}

/** The row of headings is the one with the most telling words; without any, the first row that holds text. */
const headingsOf = ({ cells }: Sheet): Headings => {
  const rows = new Map<number, SheetCell[]>();
  for (const cell of cells) {
    if (typeof cell.value !== "string" || cell.value === "" || cell.formula !== undefined) continue;
    rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell]);
  }
  const found = [...rows].map(([row, texts]) => {
    const columns = telling.flatMap((word) => {
      const cell = texts.find(({ value }) => new RegExp(`^${word}\\b`, "i").test(String(value).trim()));
      return cell ? [{ column: cell.column, heading: String(cell.value) }] : [];
    });
    return { row, told: columns.length, columns };
  });
  const best = found.sort((a, b) => b.told - a.told || a.row - b.row)[0];
  if (best && best.told >= 3) return best;
  const first = [...rows].sort(([a], [b]) => a - b).find(([, texts]) => texts.length > 1);
  if (!first) return { row: 0, told: 0, columns: [] };
  const columns = first[1].map(({ column, value }) => ({ column, heading: String(value) }));
  return { row: first[0], told: 0, columns: columns.sort((a, b) => a.column - b.column).slice(0, mostColumns) };
};

const tableOf = ({ sheet, row: heading, columns }: Headings & { sheet: Sheet }, view: GridView): LogTable => {
  const last = sheet.cells.reduce((last, { row, spill }) => Math.max(last, row + (spill?.rows ?? 1) - 1), heading);
  const places = Array.from({ length: last - heading }, (_, i) =>
    columns.map(({ column }) => ({ sheet: sheet.name, row: heading + 1 + i, column })),
  );
  const filled = places.filter((row) => row.some((place) => sayShown(view.valueAt(place)) !== ""));
  const values = filled.map((row) => row.map((place) => view.valueAt(place)));
  const refusals = filled.flatMap((row) => {
    const said = row.flatMap((place) => {
      const sentence = view.messageAt(place);
      return sentence === undefined ? [] : [{ place, sentence }];
    });
    // One refused row says the same in each of its cells.
    const first = said[0];
    return first ? [`${sayCellOf(first.place)}: ${first.sentence}`] : [];
  });
  return {
    sheet: sheet.name,
    headings: columns.map(({ heading }) => noFormula(heading)),
    rows: values.map((row) => row.map(sayShown)),
    isNumeric: columns.map((_, i) => values.some((row) => typeof row[i] === "number")),
    refusals,
  };
};

const sayShown = (value: Cell): string => {
  if (value === null) return "";
  if (typeof value === "number") return sayNumber(value);
  if (typeof value === "boolean") return String(value).toUpperCase();
  // What is copied from a terminal may end in a spreadsheet; an error's name too may be any text, when it comes from a file.
  return noFormula(value instanceof CellError ? value.code : value);
};
