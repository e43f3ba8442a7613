import { parseA1Ref, parseStructRef } from "@borgar/fx";
import { sheetName } from "./whole-address";

/** What a reference in a formula points at, told apart by how it is written. */
export type Place =
  | { readonly kind: "cells"; readonly sheet: string; readonly cells: string; readonly isSpill: boolean }
  | { readonly kind: "name"; readonly sheet: string; readonly name: string }
  | {
      readonly kind: "columns";
      /** "" is the table around the formula's own cell. */
      readonly table: string;
      /** None: all of them. */
      readonly from: string | undefined;
      readonly to: string | undefined;
      readonly isThisRow: boolean;
    };

/** Reads a reference of a formula on `sheet`. Throws a sentence for those whose values the pane does not look up. */
export const readReference = (written: string, sheet: string): Place => {
  const unread = (why: string) => new Error(`${written} ${why}, so its values are not looked up.`);
  const isSpill = written.endsWith("#");
  const reference = isSpill ? written.slice(0, -1) : written;

  const inTable = parseStructRef(reference);
  if (inTable) {
    const { columns = [], sections = [], context = [], table } = inTable;
    if (context.length > 0) throw unread("lies in another workbook");
    const isThisRow = sections.includes("this row");
    if (sections.some((section) => section !== "this row" && section !== "data"))
      throw unread("takes in the headings or totals of a table");
    return { kind: "columns", table: table ?? "", from: columns[0], to: columns[1], isThisRow };
  }

  const plain = parseA1Ref(reference);
  if (!plain) throw unread("is not a plain reference");
  const { context = [] } = plain;
  if (context.length > 1) throw unread("lies in another workbook");
  if (context[0]?.includes(":")) throw unread("spans several sheets");
  const on = sheetName(context[0] ?? sheet);
  if ("name" in plain) return { kind: "name", sheet: on, name: plain.name };
  if (plain.range.top === null || plain.range.left === null) throw unread("takes in whole rows or columns");
  return { kind: "cells", sheet: on, cells: reference.slice(reference.lastIndexOf("!") + 1), isSpill };
};
