import { keptTag, tag } from "./cell-text";
import { type Walk, type WrittenCell, walkSheet } from "./sheet-walk";
import type { Splice } from "./splice";
import type { Opened } from "./xml";

/** Cells by row and column. */
export type Cells<T> = ReadonlyMap<number, ReadonlyMap<number, T>>;

export const putCell = <T>(
  cells: Map<number, Map<number, T>>,
  { row, column }: { readonly row: number; readonly column: number },
  content: T,
): void => {
  const inRow = cells.get(row);
  if (inRow) inRow.set(column, content);
  else cells.set(row, new Map([[column, content]]));
};

/** How the cells of a sheet's part become others. */
interface CellWork<T> {
  /** A cell that stands nowhere yet, "" when it need not stand anywhere; `row` is the tag of its row when that is there. */
  fresh(place: { readonly row: number; readonly column: number }, wanted: T, row: Opened | undefined): string;
  /** What is to stand in place of a cell; undefined when it stays. Every cell is asked about, in order. */
  instead(written: WrittenCell, wanted: T | undefined): string | undefined;
  /** What a row's tag is to say beside or other than it does. */
  rowSays(row: number): Readonly<Record<string, string | undefined>> | undefined;
  /** Hears what stands outside the rows. */
  readonly outside: Pick<Walk, "element" | "elementEnd">;
}

/** The splices that put cells in their places in a sheet's part. A row is only made for cells or for what its tag is to say. */
export const cellSplices = <T>(
  xml: string,
  part: string,
  { wanted, rows }: { readonly wanted: Cells<T>; readonly rows: Iterable<number> },
  { fresh, instead, rowSays, outside }: CellWork<T>,
): Splice[] => {
  const splices: Splice[] = [];
  const asked = [...new Set([...wanted.keys(), ...rows])].sort((a, b) => a - b);
  let next = 0;
  let seen = new Set<number>();
  let openRow: Opened | undefined;
  let added = false;

  /** The cells that are wanted in a row before a column and that it does not have. */
  const missing = (row: number, before = Infinity): string => {
    const columns = [...(wanted.get(row)?.keys() ?? [])]
      .filter((column) => !seen.has(column) && column < before)
      .sort((a, b) => a - b);
    return columns
      .map((column) => {
        seen.add(column);
        return fresh({ row, column }, wanted.get(row)?.get(column) as T, openRow);
      })
      .join("");
  };
  const put = (at: number, cells: string) => {
    if (cells === "") return;
    added = true;
    splices.push({ from: at, to: at, put: cells });
  };
  /** Rows that the file does not have, before one of its own. */
  const missingRows = (before: number): string => {
    let rows = "";
    for (; next < asked.length && (asked[next] as number) < before; next++) {
      const row = asked[next] as number;
      seen = new Set();
      openRow = undefined;
      const cells = missing(row);
      const says = rowSays(row);
      if (cells !== "" || says) rows += `${tag("row", { r: String(row + 1), ...says })}${cells}</row>`;
    }
    return rows;
  };

  walkSheet(xml, part, {
    rowStart: (row, open) => {
      put(open.from, missingRows(row));
      seen = new Set();
      openRow = open;
      added = false;
    },
    cell: (written) => {
      const { row, column, open, end } = written;
      put(open.from, missing(row, column));
      seen.add(column);
      const other = instead(written, wanted.get(row)?.get(column));
      if (other !== undefined) splices.push({ from: open.from, to: end, put: other });
    },
    rowEnd: ({ row, open, closeFrom, end }) => {
      const rest = missing(row);
      const says = rowSays(row);
      // `spans` says which columns a row has; without it a reader looks for itself.
      const { spans, ...attributes } = { ...open.attributes, ...says };
      const opening = keptTag("row", rest !== "" || added ? attributes : { ...open.attributes, ...says });
      if (open.isSelfClosing) {
        if (rest !== "" || says) splices.push({ from: open.from, to: end, put: `${opening}${rest}</row>` });
      } else {
        put(closeFrom, rest);
        if (says || (added && spans !== undefined)) splices.push({ from: open.from, to: open.to, put: opening });
      }
      if (asked[next] === row) next += 1;
    },
    element: (element) => {
      if (element.name === "sheetData" && element.isSelfClosing) {
        const put = missingRows(Infinity);
        if (put !== "")
          splices.push({ ...element, put: `${keptTag("sheetData", element.attributes)}${put}</sheetData>` });
      }
      outside.element?.(element);
    },
    elementEnd: (name, from, to) => {
      if (name === "sheetData") put(from, missingRows(Infinity));
      outside.elementEnd?.(name, from, to);
    },
  });
  return splices;
};
