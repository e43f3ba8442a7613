import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Sheet } from "../../engine/book";

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
