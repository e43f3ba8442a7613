import type { Argument, Cell, Range } from "../../../src/definition/cells";
import type { Port, Selection } from "../../../src/hosts/pane/port";

/** A host whose cells and memory are given beforehand. */
export const scriptedPort = ({
  values = {},
  remembered,
  cells = [],
}: {
  /** By reference as a formula writes it. */
  values?: Readonly<Record<string, Range>>;
  remembered?: { readonly cell: string; readonly args: readonly Argument[] };
  cells?: readonly Selection[];
}): Port => ({
  onSelection: () => () => {},
  selectionAt: async (address) => {
    const found = cells.find((cell) => cell.address === address);
    if (!found) throw new Error(`There is no ${address} here.`);
    return found;
  },
  onCalculated: () => () => {},
  valuesAt: async (reference) => {
    const range = values[reference];
    if (!range) throw new Error(`${reference} is no range here.`);
    return range;
  },
  lastCallAt: (address, definition) =>
    remembered && address === remembered.cell ? { definition, args: remembered.args } : undefined,
  insertFormula: async () => {},
  insertSheet: async ({ name }) => name,
  drawsCharts: false,
  recalculate: async () => {},
  goTo: async () => {},
});

/** A selected cell of a sheet called Log. */
export const selected = (formula: string, more: Partial<Selection> = {}): Selection => ({
  address: "Log!F2",
  value: null as Cell,
  formula,
  ...more,
});
