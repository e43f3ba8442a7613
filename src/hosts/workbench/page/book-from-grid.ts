import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { Book, Sheet, SheetCell } from "../../engine/book";
import { cellValue } from "../../engine/grid-view";
import type { GridState } from "./grid-state";
import { styleOf } from "./style-of";
import { unmoved } from "./unmoved";

/**
 * What lies in the grid as a workbook that can be written. Formulas that nobody touched go back as they were read:
 * the grid has them in its own words.
 */
export const bookFromGrid = (state: GridState): Book => ({
  sheets: namedSheets(state.data).map((sheet) => sheetFromGrid(state, sheet)),
  names: state.names,
  countsFrom1904: state.asRead?.countsFrom1904,
});

/** The sheets in their order. */
export const namedSheets = ({ sheetOrder, sheets }: IWorkbookData): IWorksheetData[] =>
  sheetOrder.flatMap((id) => {
    const sheet = sheets[id];
    return sheet?.name === undefined ? [] : [sheet as IWorksheetData];
  });

/** A sheet as it lies in the grid, with the tables, lists and wordings of the file that still hold for it. */
export const sheetFromGrid = (state: GridState, sheet: IWorksheetData): Sheet => {
  const { name, columnData } = sheet;
  const read = unmoved(state, sheet);
  const cells = gridCells(state, sheet).flatMap(({ row, column, formula, value, cell }): SheetCell[] => {
    const style = styleOf(cell.s, state.data.styles);
    if (!formula && value === null && !style) return [];
    const before = read.formulaAt(row, column, formula, value);
    return [{ row, column, value, ...(formula && { formula }), ...before, ...(style && { style }) }];
  });
  const widths = Object.entries(columnData ?? {}).flatMap(([column, { w }]: [string, { w?: number }]) =>
    w === undefined ? [] : [[Number(column), charactersOf(w)] as const],
  );
  return {
    name,
    cells,
    widths: new Map(widths),
    frozen: frozenOf(sheet),
    ...read.kept,
  };
};

export const frozenOf = ({ freeze }: IWorksheetData): NonNullable<Sheet["frozen"]> => ({
  rows: Math.max(0, freeze?.ySplit ?? 0),
  columns: Math.max(0, freeze?.xSplit ?? 0),
});

/** A cell that the grid holds itself; what an answer fills is not among them. */
interface GridCell {
  readonly row: number;
  readonly column: number;
  readonly formula: string | undefined;
  readonly value: ReturnType<typeof cellValue>;
  readonly cell: ICellData;
}

export const gridCells = ({ view }: Pick<GridState, "view">, { name, cellData }: IWorksheetData): GridCell[] =>
  Object.entries(cellData ?? {}).flatMap(([row, columns]) =>
    Object.entries(columns as Record<string, ICellData | null>).flatMap(([column, cell]): GridCell[] => {
      if (!cell) return [];
      const place = { row: Number(row), column: Number(column) };
      const hasFormula = cell.f !== undefined && cell.f !== null ? cell.f !== "" : Boolean(cell.si);
      // A formula that is shared with a neighbour is not written in its own cell.
      const formula = hasFormula ? cell.f || view.formulaAt({ sheet: name, ...place }) : undefined;
      return [{ ...place, formula, value: cellValue(cell), cell }];
    }),
  );

/** A column's width in characters of the default font, from pixels. */
export const charactersOf = (pixels: number): number => (pixels - 5) / 7;
