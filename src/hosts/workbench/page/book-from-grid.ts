import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { Book, DefinedName, Sheet, SheetCell } from "../../engine/book";
import { cellValue } from "../../engine/grid-view";
import type { OpenBook } from "./open-book";
import { styleOf } from "./style-of";
import { unmoved } from "./unmoved";

/**
 * What lies in the grid as a workbook that can be written. Formulas that nobody touched go back as they were read:
 * the grid has them in its own words.
 */
export const bookFromGrid = (open: OpenBook): Book => {
  const workbook = open.grid.api.getActiveWorkbook();
  if (!workbook || !open.view) throw new Error("No workbook is open.");
  const snapshot = workbook.save();
  const sheets = snapshot.sheetOrder.flatMap((id): Sheet[] => {
    const sheet = snapshot.sheets[id];
    return sheet?.name === undefined ? [] : [sheetFromGrid(open, snapshot, sheet as IWorksheetData)];
  });
  const names = workbook.getDefinedNames().map((name): DefinedName => {
    const sheet = snapshot.sheets[name.getLocalSheetId() ?? ""]?.name;
    return { name: name.getName(), formula: name.getFormulaOrRefString(), ...(sheet !== undefined && { sheet }) };
  });
  return { sheets, names, countsFrom1904: open.asRead?.countsFrom1904 };
};

const sheetFromGrid = (open: OpenBook, snapshot: IWorkbookData, sheet: IWorksheetData): Sheet => {
  const { name, cellData, columnData, freeze } = sheet;
  const read = unmoved(open, sheet);
  const cells = Object.entries(cellData ?? {}).flatMap(([row, columns]) =>
    Object.entries(columns as Record<string, ICellData>).flatMap(([column, cell]): SheetCell[] => {
      const place = { sheet: name, row: Number(row), column: Number(column) };
      const style = styleOf(cell.s, snapshot.styles);
      const hasFormula = cell.f !== undefined && cell.f !== null ? cell.f !== "" : Boolean(cell.si);
      // A formula that is shared with a neighbour is not written in its own cell.
      const formula = hasFormula ? cell.f || open.view?.formulaAt(place) : undefined;
      const value = cellValue(cell);
      if (!formula && value === null && !style) return [];
      const before = read.formulaAt(place.row, place.column, formula, value);
      return [
        {
          row: place.row,
          column: place.column,
          value,
          ...(formula && { formula }),
          ...before,
          ...(style && { style }),
        },
      ];
    }),
  );
  const widths = Object.entries(columnData ?? {}).flatMap(([column, { w }]: [string, { w?: number }]) =>
    w === undefined ? [] : [[Number(column), (w - 5) / 7] as const],
  );
  return {
    name,
    cells,
    widths: new Map(widths),
    frozen: { rows: Math.max(0, freeze?.ySplit ?? 0), columns: Math.max(0, freeze?.xSplit ?? 0) },
    ...read.kept,
  };
};
