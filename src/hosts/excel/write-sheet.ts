import { freeName } from "../pane/sheets/free-name";
import type { Block, Look, ReadyCell, ReadySheet } from "../pane/sheets/ready-sheet";
import { addressOf, blocksOf, rowsOf } from "./blocks";

/** Writes a ready sheet into a new, empty worksheet, without waiting. Its tables take names that are not among `taken`. */
export const writeSheet = (sheet: Excel.Worksheet, ready: ReadySheet, taken: readonly string[]): void => {
  const { cells, widths = new Map(), choices = [], tables = [] } = ready;
  writeCells(sheet, cells);
  const isInTable = (column: number) => tables.some(({ block }) => isAcross(block, column));
  for (const [column, characters] of widths)
    columnOf(sheet, column).format.columnWidth = points(characters + (isInTable(column) ? filterButton : 0));
  const named = [...taken];
  for (const { name, block } of tables) {
    const table = sheet.tables.add(addressOf(block), true);
    table.name = freeName(name, named, "");
    table.style = "TableStyleLight1";
    table.showBandedRows = false;
    named.push(freeName(name, named, ""));
  }
  for (const { block, words } of choices)
    sheet.getRange(addressOf(block)).dataValidation.rule = {
      list: { inCellDropDown: true, source: words.join(",") },
    };
  freeze(sheet, ready.frozen);
};

/** Cells that lie beside each other go in one piece; a formula goes alone, for its answer may fill its neighbours. */
export const writeCells = (sheet: Excel.Worksheet, cells: readonly ReadyCell[]): void => {
  for (const { block, values } of rowsOf(cells.filter(({ value }) => value !== null)))
    sheet.getRange(addressOf(block)).values = values;
  for (const { row, column, formula } of cells)
    if (formula) sheet.getRange(addressOf({ row, column, rows: 1, columns: 1 })).formulas = [[formula]];
  for (const { block, look } of blocksOf(cells)) dress(sheet.getRange(addressOf(block)), block, look);
};

const dress = (range: Excel.Range, { rows, columns }: Block, { format, bold, italic, fill, color }: Look): void => {
  if (format) range.numberFormat = Array.from({ length: rows }, () => Array<string>(columns).fill(format));
  if (bold) range.format.font.bold = true;
  if (italic) range.format.font.italic = true;
  if (color) range.format.font.color = `#${color}`;
  if (fill) range.format.fill.color = `#${fill}`;
};

const freeze = (sheet: Excel.Worksheet, { rows, columns } = { rows: 0, columns: 0 }): void => {
  if (rows > 0 && columns > 0)
    sheet.freezePanes.freezeAt(sheet.getRange(addressOf({ row: 0, column: 0, rows, columns })));
  else if (rows > 0) sheet.freezePanes.freezeRows(rows);
  else if (columns > 0) sheet.freezePanes.freezeColumns(columns);
};

const columnOf = (sheet: Excel.Worksheet, column: number): Excel.Range =>
  sheet.getRange(addressOf({ row: 0, column, rows: 1, columns: 1 })).getEntireColumn();

const isAcross = ({ column, columns }: Block, at: number): boolean => at >= column && at < column + columns;

/** In characters: what a table's heading loses to its button. */
const filterButton = 3;

/** A width in characters as Excel's points: a character of the default font is 7 pixels, 5 are left free, a pixel is ¾ of a point. */
const points = (characters: number): number => (characters * 7 + 5) * 0.75;
