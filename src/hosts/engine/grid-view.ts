import {
  CellValueType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  type Univer,
  type Workbook,
} from "@univerjs/core";
import { type Cell, CellError } from "../../definition/cells";
import { reachesIn } from "./cured/addresses";
import type { ErrorNote } from "./engine-values";
import { type Block, MOST_COLUMNS, MOST_ROWS, type Place, sayPlace } from "./place";
import { goesInCircle } from "./settle";
import { type FindBlock, indexOfBlocks } from "./spill-index";
import { formulaRecord } from "./univer-internals";

/** What stands in the cells of a running grid, whole doubles and not what is displayed. */
export interface GridView {
  readonly sheets: readonly string[];
  /** A formula whose answer is blank gives 0, as in a spreadsheet; a cell with nothing in it gives null. */
  valueAt(place: Place): Cell;
  /** The sentence of the refusal that stands in a cell, also inside a spill. */
  messageAt(place: Place): string | undefined;
  /** Where the answer that fills a cell begins, and how far it reaches; undefined outside answers of several cells. */
  spillAt(place: Place): (Block & { readonly sheet: string }) | undefined;
  /** The formula that makes a cell's value: inside a spill that of its first cell; "" when there is none. */
  formulaAt(place: Place): string;
  /** All answers on a sheet that fill several cells. */
  spillsOn(sheet: string): readonly Block[];
  /** How many rows and columns the largest answer lacks because its sheet ends too soon; undefined when all sheets are large enough. */
  lacking(): { readonly rows: number; readonly columns: number } | undefined;
  /** Whether formulas go in a circle; their values mean nothing. */
  isCircular(): boolean;
  /** Where the INDIRECT and OFFSET of formulas led, by the formula's place as `sayPlace` tells it: the engine sees no circle there. */
  reached(): Reached;
}

/** Blocks of cells by the place of the formula that reads them. */
export type Reached = ReadonlyMap<string, readonly (Block & { readonly sheet: string })[]>;

/** `isStill`: nothing will change any more, so the answers that fill several cells are looked through once and not for each cell. */
export const viewOf = (univer: Univer, unit: string, isStill = false): GridView => {
  const record = formulaRecord(univer);
  const book = univer.__getInjector().get(IUniverInstanceService).getUnit<Workbook>(unit);
  if (!book) throw new Error(`No workbook ${unit} is open in the grid.`);
  const sheetOf = (name: string) => {
    const sheet = book.getSheetBySheetName(name);
    if (!sheet) throw new Error(`There is no sheet "${name}".`);
    return sheet;
  };

  const cellAt = ({ sheet, row, column }: Place): Nullable<ICellData> => {
    const own = sheetOf(sheet);
    return record.getArrayFormulaCellData()[unit]?.[own.getSheetId()]?.[row]?.[column] ?? own.getCellRaw(row, column);
  };

  // An answer that had no room keeps its extent in the record though only its first cell shows.
  const extentsOn = (sheet: string): Block[] => {
    const byRow: IObjectMatrixPrimitiveType<IRange> =
      record.getArrayFormulaRange()[unit]?.[sheetOf(sheet).getSheetId()] ?? {};
    return Object.values(byRow).flatMap((byColumn) =>
      Object.values(byColumn as Record<number, IRange>).map(
        ({ startRow: row, startColumn: column, endRow, endColumn }) => {
          return { row, column, rows: endRow - row + 1, columns: endColumn - column + 1 };
        },
      ),
    );
  };

  const blocksOn = (sheet: string): { spills: readonly Block[]; find: FindBlock } => {
    const spills = extentsOn(sheet).filter((block) => shownError(cellAt({ sheet, ...block })) !== "#SPILL!");
    return { spills, find: indexOfBlocks(spills) };
  };
  const known = new Map<string, ReturnType<typeof blocksOn>>();
  const onSheet = (sheet: string) => {
    const found = known.get(sheet) ?? blocksOn(sheet);
    if (isStill) known.set(sheet, found);
    return found;
  };

  const lacking = () => {
    let rows = 0;
    let columns = 0;
    for (const sheet of book.getSheets())
      for (const block of extentsOn(sheet.getName())) {
        if (block.row + block.rows > MOST_ROWS || block.column + block.columns > MOST_COLUMNS) continue;
        rows = Math.max(rows, block.row + block.rows - sheet.getRowCount());
        columns = Math.max(columns, block.column + block.columns - sheet.getColumnCount());
      }
    return rows > 0 || columns > 0 ? { rows, columns } : undefined;
  };

  const spillAt: GridView["spillAt"] = (place) => {
    const block = onSheet(place.sheet).find(place);
    return block && { ...block, sheet: place.sheet };
  };

  const ownFormulaAt = ({ sheet, row, column }: Place): string =>
    record.getFormulaStringByCell(row, column, sheetOf(sheet).getSheetId(), unit) ?? "";

  const reached = (): Reached => {
    const names = new Map(book.getSheets().map((sheet) => [sheet.getSheetId(), sheet.getName()]));
    return new Map(
      reachesIn(unit).map(({ sheetId, row, column, blocks }) => {
        const sheet = names.get(sheetId) ?? "";
        return [
          sayPlace({ sheet, row, column }),
          blocks.map((block) => ({ ...block, sheet: names.get(block.sheetId) ?? sheet })),
        ];
      }),
    );
  };

  return {
    sheets: book.getSheets().map((sheet) => sheet.getName()),
    spillsOn: (sheet) => onSheet(sheet).spills,
    lacking,
    isCircular: () => goesInCircle(unit),
    reached,
    spillAt,
    valueAt: (place) => {
      const cell = cellAt(place);
      const value = cellValue(cell);
      return value === null && (ownFormulaAt(place) !== "" || spillAt(place)) ? 0 : value;
    },
    messageAt: (place) => {
      const cell = cellAt(place);
      const note = cell?.custom as Partial<ErrorNote> | null | undefined;
      return note?.message !== undefined && note.code === shownError(cell) ? note.message : undefined;
    },
    formulaAt: (place) => ownFormulaAt(spillAt(place) ?? place),
  };
};

/** The engine's own errors, for a formula that it cannot read or that goes in a circle. */
export const engineComplaints = ["#ERROR!", "#CYCLE!", "#CONNECT!", "#BLOCKED!", "#FIELD!", "#GETTING_DATA"];

const errors: ReadonlySet<unknown> = new Set([
  ...["#N/A", "#VALUE!", "#REF!", "#DIV/0!", "#NUM!", "#NAME?", "#NULL!", "#SPILL!", "#CALC!"],
  ...engineComplaints,
]);

const shownError = (cell: Nullable<ICellData>): string | undefined =>
  errors.has(cell?.v) ? (cell?.v as string) : undefined;

/** A paragraph of a document ends with a carriage return, and the document with a line feed. */
const textOf = (stream: string): Cell => stream.replace(/\r?\n?$/, "").replaceAll("\r", "\n") || null;

/** A cell of the engine as ours. */
export const cellValue = (cell: Nullable<ICellData>): Cell => {
  const value = cell?.v;
  // A text of several lines or fonts the engine keeps as a document.
  if (value === null || value === undefined) return cell?.p?.body ? textOf(cell.p.body.dataStream) : null;
  if (cell?.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === "1" || value === "TRUE";
  if (typeof value === "string" && errors.has(value)) return new CellError(value);
  if (cell?.t === CellValueType.NUMBER) return Number(value);
  return value;
};
