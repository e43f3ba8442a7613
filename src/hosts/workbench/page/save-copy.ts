import type { AnyDefinition } from "../../../definition/define";
import { withValues } from "../../engine/with-values";
import { writeWorkbook } from "../../engine/xlsx/write-workbook";
import { bookFromGrid } from "./book-from-grid";
import type { OpenBook } from "./open-book";

/** The open workbook as a new file's bytes: values, formulas, number formats, widths, names, tables and lists of words. */
export const copyOf = (open: OpenBook, catalogue: readonly AnyDefinition[]): Uint8Array<ArrayBuffer> => {
  if (!open.view) throw new Error("No workbook is open.");
  return writeWorkbook(withValues(bookFromGrid(open), open.view), catalogue);
};

/** Hands bytes to the browser as a download. */
export const download = (name: string, bytes: Uint8Array<ArrayBuffer>): void => {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
