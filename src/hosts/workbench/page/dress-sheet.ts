import { type IStyleData, type IWorkbookData, VerticalAlign } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Sheet } from "../../engine/book";

/** Figures and words of neighbouring cells do not touch, and stand in the middle of their rows. */
export const usualLook: IStyleData = { vt: VerticalAlign.MIDDLE, pd: { l: 4, r: 4, t: 0, b: 1 } };

/** A workbook all of whose sheets have the usual look where their cells have none of their own. */
export const withUsualLook = <Snapshot extends Partial<IWorkbookData>>(snapshot: Snapshot): Snapshot => ({
  ...snapshot,
  sheets: Object.fromEntries(
    Object.entries(snapshot.sheets ?? {}).map(([id, sheet]) => [id, { ...sheet, defaultStyle: usualLook }]),
  ),
});

const edges = { backgroundColor: "#F1EDE3", borderColor: "#D8CFBC", fontColor: "#5D5748" };

/** The letters and numbers at a sheet's edges in the colours of the bench. The grid turns them over itself when it is dark. */
export const dressEdges = (sheet: FWorksheet): void => {
  sheet.customizeColumnHeader({ headerStyle: { ...edges, fontSize: 13 } });
  sheet.customizeRowHeader({ headerStyle: { ...edges, fontSize: 12 } });
};

/** Rows are measured only near the top: measuring is slow, and what wraps is mostly headings. */
const mostRows = 60;

/** Rows whose cells wrap grow to show them whole. */
export const growRows = (sheet: FWorksheet, { cells }: Sheet): void => {
  const wrapped = new Set(cells.filter(({ style, row }) => style?.wrap && row < mostRows).map(({ row }) => row));
  for (const row of wrapped) sheet.autoResizeRows(row, 1);
};
