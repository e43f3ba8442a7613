import type { Cell } from "../../../definition/cells";
import { answer, answerHeading, givenHeading } from "./looks";
import type { Block, Look, ReadyCell, ReadySheet, ReadyTable } from "./ready-sheet";

/** A column of a list: what is typed into it, or what a formula answers in it. */
export interface Column<Entry> {
  readonly heading: string;
  /** In characters. */
  readonly width: number;
  /** A number format as a spreadsheet writes it, or one for each line, counted from 0. */
  readonly format?: string | ((line: number) => string | undefined);
  readonly typed?: (entry: Entry, line: number) => Cell;
  /** The number format of a typed cell where it is not that of its column. */
  readonly typedFormat?: (value: Cell) => string | undefined;
  /** The look of what is typed, beside its number format. */
  readonly look?: Look;
  /** The words its cells offer. */
  readonly words?: readonly string[];
  /** The formula whose answer starts at the top and fills the column (and those beside it that say `answers`). */
  readonly formula?: string;
  /** A formula of each row, which is given as a sheet counts it. */
  readonly each?: (row: number, entry: Entry) => string | null;
  /** Filled by the formula of a column before it. */
  readonly answers?: true;
}

/** A list under a row of headings: where that row begins, its entries, and how many lines it has room for. */
export interface List<Entry> {
  readonly columns: readonly Column<Entry>[];
  readonly entries: readonly Entry[];
  readonly first?: number;
  readonly left?: number;
  readonly lines?: number;
}

export const listCells = <Entry>(list: List<Entry>): ReadyCell[] => {
  const { columns, entries, first = 0, left = 0, lines = entries.length } = list;
  return columns.flatMap((column, place) => {
    const style = isAnswered(column) ? answerHeading : givenHeading;
    const heading = { row: first, column: left + place, value: column.heading, style };
    const below = Array.from({ length: lines }, (_, line) => {
      const cell = contentOf(column, { row: first + 1 + line, line, entry: entries[line] });
      return cell && { row: first + 1 + line, column: left + place, ...cell };
    });
    return [heading, ...below.filter((cell) => cell !== undefined)];
  });
};

const isAnswered = <Entry>({ answers, formula, each }: Column<Entry>): boolean => Boolean(answers || formula || each);

const contentOf = <Entry>(
  column: Column<Entry>,
  { row, line, entry }: { row: number; line: number; entry: Entry | undefined },
): Omit<ReadyCell, "row" | "column"> | undefined => {
  const { typed, typedFormat, format, look, formula, each } = column;
  const usual = typeof format === "function" ? format(line) : format;
  if (isAnswered(column)) {
    const own = (line === 0 && formula) || (entry !== undefined && each?.(row + 1, entry)) || undefined;
    return { value: null, style: formatted(usual, answer), ...(own && { formula: own }) };
  }
  const value = entry === undefined ? null : (typed?.(entry, line + 1) ?? null);
  // A line that is still empty has its number format already, for what will be typed there.
  if (value === null) return usual ? { value, style: { format: usual } } : undefined;
  return { value, style: formatted(typedFormat?.(value) ?? usual, look) };
};

const formatted = (format: string | undefined, look: Look = {}): Look => (format ? { ...look, format } : look);

/** The same columns, what is typed into them in another look. */
export const typedIn = <Entry>(look: Look | undefined, columns: readonly Column<Entry>[]): readonly Column<Entry>[] =>
  look ? columns.map((column) => (column.typed ? { ...column, look } : column)) : columns;

/** What a sheet needs beside the cells of its list. */
export const listLooks = <Entry>(list: List<Entry>): Pick<ReadySheet, "widths" | "choices"> => {
  const { columns, entries, first = 0, left = 0, lines = entries.length } = list;
  return {
    widths: new Map(columns.map(({ width }, place) => [left + place, width])),
    choices: columns.flatMap(({ words }, place) =>
      words ? [{ block: { row: first + 1, column: left + place, rows: lines, columns: 1 }, words }] : [],
    ),
  };
};

/** The typed columns at a list's beginning as a table. What formulas answer stays outside: no table takes a spilled answer. */
export const typedTable = <Entry>(name: string, list: List<Entry>): ReadyTable => {
  const { columns, entries, first = 0, left = 0, lines = entries.length } = list;
  const answered = columns.findIndex(isAnswered);
  const headings = columns.slice(0, answered < 0 ? undefined : answered).map(({ heading }) => heading);
  const block: Block = { row: first, column: left, rows: lines + 1, columns: headings.length };
  return { name, block, columns: headings };
};
