// Reads what is typed in an example workbook, with a reader that is not the program's own.

import { resolve } from "node:path";
import ExcelJS from "exceljs";

/** Where the workbooks lie: commands and tests run in the project's folder. */
export const examples = resolve("examples");

/** A cell as it was typed; null where it is empty, or where a formula answers. Days and clock times as numbers of days. */
const typed = (cell) => {
  if (cell.type === ExcelJS.ValueType.Formula) return null;
  const { value } = cell;
  if (value instanceof Date) return value.getTime() / 86400000 + 25569;
  return value === undefined || value === "" ? null : value;
};

const opened = new Map();

const sheetOf = async (file, name) => {
  if (!opened.has(file)) opened.set(file, new ExcelJS.Workbook().xlsx.readFile(resolve(examples, file)));
  return (await opened.get(file)).getWorksheet(name);
};

/** What is typed in single cells. */
export const cellsOf = async (file, sheetName, addresses) => {
  const sheet = await sheetOf(file, sheetName);
  return addresses.map((address) => typed(sheet.getCell(address)));
};

/** What is typed beside labels in the first column, the first of each from the top. */
export const besideLabels = async (file, sheetName, labels) => {
  const sheet = await sheetOf(file, sheetName);
  const rows = Array.from({ length: sheet.rowCount }, (_, i) => sheet.getRow(i + 1));
  return labels.map((label) => typed(rows.find((row) => typed(row.getCell(1)) === label).getCell(2)));
};

/**
 * The lines of a list: what is typed under each heading, by heading. The list starts under the row whose first cell is
 * `firstHeading` and ends before the first line whose first cell is empty.
 */
export const linesOf = async (file, sheetName, firstHeading) => {
  const sheet = await sheetOf(file, sheetName);
  const rows = Array.from({ length: sheet.rowCount }, (_, i) => sheet.getRow(i + 1));
  const top = rows.findIndex((row) => typed(row.getCell(1)) === firstHeading);
  const headings = rows[top].values.slice(1);
  const lines = rows.slice(top + 1);
  const end = lines.findIndex((row) => typed(row.getCell(1)) === null);
  return lines
    .slice(0, end < 0 ? undefined : end)
    .map((row) => Object.fromEntries(headings.map((heading, i) => [heading, typed(row.getCell(i + 1))])));
};
