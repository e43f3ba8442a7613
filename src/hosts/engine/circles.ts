import { parseA1Ref } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import type { Book } from "./book";
import type { Reached } from "./grid-view";
import { type Place, sayPlace } from "./place";

interface Formula extends Place {
  readonly formula: string;
}

/** The numbers of the formulas on one sheet, by row and column. */
type Rows = Map<number, Map<number, number>>;

interface Edges {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Looking at more references than this ends the search; then every formula that was still open counts as part of a circle. */
const MOST_STEPS = 20_000_000;

/**
 * The cells whose formulas lead back to themselves, directly or over others. Made for a workbook of which the engine says that
 * there is such a circle, for it does not say where; and for what formulas `reached` over INDIRECT and OFFSET, of which it says nothing.
 */
export const circularCells = (book: Book, reached: Reached = new Map()): string[] => {
  const formulas: Formula[] = book.sheets.flatMap((sheet) =>
    sheet.cells.flatMap(({ row, column, formula }) =>
      formula === undefined ? [] : [{ sheet: sheet.name, row, column, formula }],
    ),
  );
  const rows = new Map<string, Rows>();
  formulas.forEach(({ sheet, row, column }, number) => {
    const own: Rows = rows.get(sheet.toLowerCase()) ?? new Map();
    rows.set(sheet.toLowerCase(), own);
    own.set(row, (own.get(row) ?? new Map()).set(column, number));
  });
  let steps = 0;
  const readIn = (sheet: string, { top, left, bottom, right }: Edges): number[] => {
    const found: number[] = [];
    const own: Rows = rows.get(sheet.toLowerCase()) ?? new Map();
    const wanted =
      bottom - top < own.size
        ? Array.from({ length: bottom - top + 1 }, (_, step) => top + step)
        : [...own.keys()].filter((row) => row >= top && row <= bottom);
    for (const row of wanted)
      for (const [column, read] of own.get(row) ?? []) {
        steps += 1;
        if (column >= left && column <= right) found.push(read);
      }
    return found;
  };
  const readBy = (number: number): number[] => {
    const place = formulas[number] as Formula;
    const written = tokenize(place.formula).flatMap(({ type, value }) => {
      const reference = type.startsWith("range") ? parseA1Ref(value) : undefined;
      if (!reference || !("range" in reference)) return [];
      const { top, left, bottom = top, right = left } = reference.range;
      const edges = { top: top ?? 0, left: left ?? 0, bottom: bottom ?? Infinity, right: right ?? Infinity };
      return readIn(reference.context?.at(-1) ?? place.sheet, edges);
    });
    const come = (reached.get(sayPlace(place)) ?? []).flatMap(({ sheet, row, column, rows, columns }) =>
      readIn(sheet, { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 }),
    );
    return [...written, ...come];
  };
  const isOver = () => steps > MOST_STEPS;
  return members(formulas.length, readBy, isOver).map((number) => sayPlace(formulas[number] as Formula));
};

/** Tarjan's strongly connected components without recursion, as chains may be long; those of one node only when it reads itself. */
const members = (count: number, readBy: (node: number) => number[], isOver: () => boolean): number[] => {
  const found: number[] = [];
  const order = new Int32Array(count).fill(-1);
  const low = new Int32Array(count);
  const onStack = new Uint8Array(count);
  const stack: number[] = [];
  let next = 0;
  for (let root = 0; root < count; root++) {
    if (order[root] !== -1) continue;
    const work: { node: number; reads: number[]; at: number }[] = [];
    const enter = (node: number) => {
      order[node] = low[node] = next++;
      stack.push(node);
      onStack[node] = 1;
      work.push({ node, reads: readBy(node), at: 0 });
    };
    enter(root);
    while (work.length > 0) {
      if (isOver()) return [...found, ...stack];
      const top = work.at(-1) as (typeof work)[number];
      const { node, reads } = top;
      const read = reads[top.at++];
      if (read !== undefined) {
        if (order[read] === -1) enter(read);
        else if (onStack[read]) low[node] = Math.min(low[node] as number, order[read] as number);
        continue;
      }
      work.pop();
      const above = work.at(-1);
      if (above) low[above.node] = Math.min(low[above.node] as number, low[node] as number);
      if (low[node] !== order[node]) continue;
      const component = stack.splice(stack.lastIndexOf(node));
      for (const member of component) onStack[member] = 0;
      if (component.length > 1 || reads.includes(node)) found.push(...component);
    }
  }
  return found;
};
