import { type Cell, CellError } from "../../definition/cells";
import { noFormula } from "../engine/no-formula";

/** Rows as CSV lines. Numbers are whole doubles; a text that a spreadsheet would take for a formula gets an apostrophe before it. */
export const csv = (rows: Iterable<readonly Cell[]>): string => {
  const lines: string[] = [];
  for (const row of rows) lines.push(row.map(csvCell).join(","));
  return lines.length === 0 ? "" : `${lines.join("\n")}\n`;
};

const csvCell = (cell: Cell): string => {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return String(cell);
  // An error's name too may be any text, when it comes from a file.
  return csvText(cell instanceof CellError ? cell.code : cell);
};

/** Characters that a terminal obeys instead of showing them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be taken out.
const obeyed = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g;

const csvText = (text: string): string => {
  const harmless = noFormula(text.replace(obeyed, "\ufffd"));
  // Readers in other countries part cells at semicolons.
  return /[",;\t\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
};
