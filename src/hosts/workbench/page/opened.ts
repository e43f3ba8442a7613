import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Book, Sheet } from "../../engine/book";
import type { GridView } from "../../engine/grid-view";
import { renamed } from "./renamed";

/** How many rows and columns a sheet has. */
export interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** What is known of the workbook that lies open in the grid, beside what the grid itself knows. */
export interface Opened {
  readonly unit: string;
  /** As it was read, with its names and tables. */
  readonly asRead: Book;
  /** As the grid got it, in the engine's words. */
  readonly shown: Book;
  readonly view: GridView;
  /** The sheets' sizes when they were opened, by name. */
  readonly sizes: ReadonlyMap<string, Size>;
  /** What the sheets are called in all these, by the grid's ids of them. */
  readonly names: ReadonlyMap<string, string>;
}

export const sizesOf = (sheets: readonly FWorksheet[]): [string, Size][] =>
  sheets.map((sheet) => [sheet.getSheetName(), { rows: sheet.getMaxRows(), columns: sheet.getMaxColumns() }]);

export const namesOf = (sheets: readonly FWorksheet[]): [string, string][] =>
  sheets.map((sheet) => [sheet.getSheetId(), sheet.getSheetName()]);

/** With one more sheet, or another in the place of one of its name. */
export const withSheet = (opened: Opened, sheet: FWorksheet, shown: Sheet, asRead: Sheet): Opened => {
  const among = ({ sheets, ...book }: Book, one: Sheet): Book => ({
    ...book,
    sheets: [...sheets.filter(({ name }) => name !== one.name), one],
  });
  return {
    ...opened,
    asRead: among(opened.asRead, asRead),
    shown: among(opened.shown, shown),
    sizes: new Map([...opened.sizes, ...sizesOf([sheet])]),
    names: new Map([...opened.names, ...namesOf([sheet])]),
  };
};

/** Sheets are renamed in the grid, also by undoing a rename: what is known of them goes by their present names. */
export const inPresentNames = (opened: Opened, sheets: readonly FWorksheet[]): Opened => {
  let known = opened;
  for (const [id, now] of namesOf(sheets)) {
    const before = known.names.get(id);
    if (before !== undefined && before !== now) known = underName(known, id, before, now);
  }
  return known;
};

const underName = (known: Opened, id: string, before: string, now: string): Opened => {
  const size = known.sizes.get(before);
  return {
    ...known,
    asRead: renamed(known.asRead, before, now),
    shown: renamed(known.shown, before, now),
    sizes: new Map([...known.sizes, ...(size ? [[now, size] as const] : [])]),
    names: new Map([...known.names, [id, now]]),
  };
};
