import type { Cell } from "../../src/definition/cells";
import type { Sheet, SheetCell, Style } from "../../src/hosts/engine/book";
import { answer, answerHeading, givenHeading } from "./looks";

/** A column of a list: what is typed into it, or what a formula answers in it. */
export interface Column<Entry> {
  readonly heading: string;
  /** In characters. */
  readonly width: number;
  /** A number format as a spreadsheet writes it, or one for each line, counted from 0. */
  readonly format?: string | ((line: number) => string | undefined);
  readonly typed?: (entry: Entry, line: number) => Cell;
  /** The look of a typed cell where it is not that of its column. */
  readonly typedFormat?: (value: Cell) => string | undefined;
  /** The words its cells offer. */
  readonly words?: readonly string[];
  /** The formula whose answer starts at the top and fills the column (and those beside it that say `answers`). */
  readonly formula?: string;
  /** A formula of each row, which is given as a sheet counts it. */
  readonly each?: (row: number, entry: Entry) => string | null;
  /** Filled by the formula of a column before it. */
  readonly answers?: true;
}

/** A list under a row of headings: its first row, its entries, and how many lines it has room for. */
export interface List<Entry> {
  readonly columns: readonly Column<Entry>[];
  readonly entries: readonly Entry[];
  readonly first?: number;
  readonly lines?: number;
}

export const listCells = <Entry>({ columns, entries, first = 0, lines = entries.length }: List<Entry>): SheetCell[] =>
  columns.flatMap((column, place) => {
    const answers = column.answers || column.formula || column.each;
    const heading = { row: first, column: place, value: column.heading, style: answers ? answerHeading : givenHeading };
    const below = Array.from({ length: lines }, (_, line) => cellOf(column, place, { first, line, entries }));
    return [heading, ...below.filter((cell) => cell !== undefined)];
  });

const cellOf = <Entry>(
  { typed, typedFormat, format, formula, each, answers }: Column<Entry>,
  column: number,
  { first, line, entries }: { first: number; line: number; entries: readonly Entry[] },
): SheetCell | undefined => {
  const row = first + 1 + line;
  const entry = entries[line];
  const usual = typeof format === "function" ? format(line) : format;
  if (answers || formula || each) {
    const own = (line === 0 && formula) || (entry !== undefined && each?.(row + 1, entry)) || undefined;
    return { row, column, value: null, style: formatted(usual, answer), ...(own && { formula: own }) };
  }
  const value = entry === undefined ? null : (typed?.(entry, line + 1) ?? null);
  return value === null ? undefined : { row, column, value, style: formatted(typedFormat?.(value) ?? usual) };
};

const formatted = (format: string | undefined, look: Style = {}): Style => (format ? { ...look, format } : look);

/** What a sheet needs beside the cells of its list. */
export const listLooks = <Entry>({
  columns,
  entries,
  first = 0,
  lines = entries.length,
}: List<Entry>): Pick<Sheet, "widths" | "choices"> => ({
  widths: new Map(columns.map(({ width }, column) => [column, width])),
  choices: columns.flatMap(({ words }, column) =>
    words ? [{ block: { row: first + 1, column, rows: lines, columns: 1 }, words }] : [],
  ),
});
