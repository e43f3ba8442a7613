import type { AnyDefinition } from "../../../definition/define";
import type { Sheet } from "../../engine/book";
import { readable } from "../../engine/readable";
import { freeName } from "../../pane/sheets/free-name";
import type { ReadySheet } from "../../pane/sheets/ready-sheet";
import { goTo } from "./go-to";
import type { OpenBook } from "./open-book";

/** Puts a ready sheet into the open workbook under a free name, which it tells; the grid draws no charts, so its chart is left out. */
export const insertSheet = async (
  open: OpenBook,
  catalogue: readonly AnyDefinition[],
  { chart: _, ...ready }: ReadySheet,
): Promise<string> => {
  const taken = open.grid.api.getActiveWorkbook()?.getSheets() ?? [];
  const name = freeName(
    ready.name,
    taken.map((sheet) => sheet.getSheetName()),
  );
  const tables = (open.asRead?.sheets ?? []).flatMap((sheet) => (sheet.tables ?? []).map((table) => table.name));
  const asRead: Sheet = {
    ...ready,
    name,
    tables: ready.tables?.map((table) => ({ ...table, name: freeName(table.name, tables, "") })),
  };
  const [shown = asRead] = readable({ sheets: [asRead] }, catalogue).book.sheets;
  await open.add(shown, asRead);
  goTo(open, { sheet: name, row: 0, column: 0 });
  return name;
};
