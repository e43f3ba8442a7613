import { keptTag } from "./cell-text";
import { listSplices, type WrittenList } from "./list-splices";
import type { Splice } from "./splice";
import type { Opened } from "./xml";

/** What is asked of a column; left out, it stays. */
export interface ColumnWish {
  /** In characters of the default font. */
  readonly width?: number;
  readonly hidden?: true;
}

/** The columns of a sheet's part as they are written. */
interface WrittenColumns extends WrittenList {
  readonly columns: readonly Opened[];
}

/** Splices that make some columns others; one that is written together with its neighbours is taken out of their row. */
export const columnSplices = (written: WrittenColumns, wishes: ReadonlyMap<number, ColumnWish>): Splice[] => {
  const left = new Map([...wishes].sort(([a], [b]) => a - b));
  const splices: Splice[] = [];
  const fresh = (before: number): string => {
    let columns = "";
    for (const [column, wish] of left) {
      if (column >= before) break;
      left.delete(column);
      columns += columnText({}, column, column, wish);
    }
    return columns;
  };
  for (const { attributes, from, to } of written.columns) {
    const [first, last] = [Number(attributes.min) - 1, Number(attributes.max) - 1];
    const inserted = fresh(first);
    if (inserted !== "") splices.push({ from, to: from, put: inserted });
    const touched = [...left].filter(([column]) => column >= first && column <= last);
    if (touched.length === 0) continue;
    let put = "";
    let next = first;
    for (const [column, wish] of touched) {
      left.delete(column);
      if (column > next) put += columnText(attributes, next, column - 1);
      put += columnText(attributes, column, column, wish);
      next = column + 1;
    }
    if (next <= last) put += columnText(attributes, next, last);
    splices.push({ from, to, put });
  }
  return [...splices, ...listSplices("cols", written, fresh(Infinity))];
};

const columnText = (
  attributes: Readonly<Record<string, string>>,
  first: number,
  last: number,
  { width, hidden }: ColumnWish = {},
): string =>
  keptTag(
    "col",
    {
      ...attributes,
      min: String(first + 1),
      max: String(last + 1),
      ...(width !== undefined && { width: String(width), customWidth: "1", bestFit: undefined }),
      ...(hidden && { hidden: "1" }),
    },
    "/>",
  );
