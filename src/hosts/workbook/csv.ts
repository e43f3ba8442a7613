import { type Cell, CellError } from "../../definition/cells";

/** Rows as CSV lines. Numbers are whole doubles; a text that a spreadsheet would take for a formula gets an apostrophe before it. */
export const csv = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(csvCell).join(",")}\n`).join("");

const csvCell = (cell: Cell): string => {
  if (cell === null) return "";
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return String(cell);
  const harmless = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
};
