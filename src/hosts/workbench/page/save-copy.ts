import type { AnyDefinition } from "../../../definition/define";
import { withValues } from "../../engine/with-values";
import { CannotKeep } from "../../engine/xlsx/cannot-keep";
import { keepPackage } from "../../engine/xlsx/keep-package";
import type { OpenedWorkbook } from "../../engine/xlsx/open-workbook";
import { UnreadableWorkbook } from "../../engine/xlsx/unreadable";
import { writeWorkbook } from "../../engine/xlsx/write-workbook";
import { bookFromGrid } from "./book-from-grid";
import type { GridState } from "./grid-state";
import { changedSince } from "./kept-file";

/** The open workbook as a new file. */
export interface Copy {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Sheets on which cells were moved, in the original's package; or why it is another package, written anew. */
  readonly how: { readonly moved: readonly string[] } | { readonly anew: string };
}

/**
 * The open workbook as a copy of the file it came from, in which only what was changed differs. Where its sheets have not kept their
 * places, a new file: values, formulas, number formats, widths, names, tables and lists of words.
 */
export const copyOf = (opened: OpenedWorkbook, state: GridState, catalogue: readonly AnyDefinition[]): Copy => {
  try {
    const { edits, kept, moved } = changedSince(opened.book, state);
    return { bytes: keepPackage(opened, edits, state.view, kept, catalogue), how: { moved } };
  } catch (thrown) {
    if (!(thrown instanceof CannotKeep || thrown instanceof UnreadableWorkbook)) throw thrown;
    const bytes = writeWorkbook(withValues(bookFromGrid(state), state.view), catalogue);
    return { bytes, how: { anew: thrown instanceof CannotKeep ? thrown.message : "it would not be read again" } };
  }
};

const types: Readonly<Record<string, string>> = {
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  xlsm: "application/vnd.ms-excel.sheet.macroEnabled.12",
};

/** Hands bytes to the browser as a download. */
export const download = (name: string, bytes: Uint8Array<ArrayBuffer>): void => {
  const type = types[/[^.]*$/.exec(name.toLowerCase())?.[0] ?? ""] ?? types.xlsx;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { ...(type && { type }) }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
