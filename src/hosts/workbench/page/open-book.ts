import { IUndoRedoService } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Book, Sheet } from "../../engine/book";
import { type GridView, viewOf } from "../../engine/grid-view";
import type { Place } from "../../engine/place";
import { ROOM, sheetSnapshot, snapshotOf } from "../../engine/snapshot";
import { dressEdges, growRows } from "./dress-sheet";
import type { Grid } from "./start-grid";

type Listener = () => void;

interface Opened {
  readonly unit: string;
  readonly asRead: Book;
  readonly shown: Book;
  readonly view: GridView;
  readonly sizes: ReadonlyMap<string, Size>;
}

/** How many rows and columns a sheet has. */
export interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** The workbook that lies open in the grid, and the cell that is selected in it. */
export class OpenBook {
  readonly #moved = new Set<Listener>();
  readonly #calculated = new Set<Listener>();
  #open: Opened | undefined;

  constructor(readonly grid: Grid) {
    const { api } = grid;
    const moved = () => tell(this.#moved);
    const calculated = () => tell(this.#calculated);
    // The engine keeps the first moves after a workbook is opened from one event or another; together they miss none.
    api.addEvent(api.Event.SelectionChanged, moved);
    api.addEvent(api.Event.CellClicked, moved);
    api.addEvent(api.Event.ActiveSheetChanged, moved);
    api.addEvent(api.Event.SheetCreated, moved);
    api.addEvent(api.Event.SheetValueChanged, calculated);
    api.getFormula().calculationEnd(calculated);
  }

  /** Shows another workbook, `asRead` in the engine's words; resolves once it has been calculated. What was open is given up. */
  async open(book: Book, asRead: Book): Promise<void> {
    const { api, univer } = this.grid;
    const before = this.#open?.unit;
    this.#open = undefined;
    const snapshot = snapshotOf(book);
    const calculated = this.#nextCalculation();
    const workbook = api.createWorkbook(snapshot);
    // Only now: the engine's own parts look for a workbook at any time.
    if (before !== undefined) api.disposeUnit(before);
    workbook.onSelectionChange(() => tell(this.#moved));
    const sizes = workbook.getSheets().map((sheet) => [sheet.getSheetName(), sizeOf(sheet)] as const);
    const view = viewOf(univer, snapshot.id);
    this.#open = { unit: snapshot.id, asRead, shown: book, view, sizes: new Map(sizes) };
    // The engine says nothing at the end of a calculation of nothing.
    if (book.sheets.some(({ cells }) => cells.some(({ formula }) => formula !== undefined))) await calculated;
    workbook.getSheets().forEach((sheet, i) => {
      dressEdges(sheet);
      if (book.sheets[i]) growRows(sheet, book.sheets[i]);
    });
    // What the page did to show the workbook is nothing that a person would take back.
    univer.__getInjector().get(IUndoRedoService).clearUndoRedo(snapshot.id);
    this.moved();
  }

  /** Puts one more sheet behind the others, `asRead` in the engine's words; resolves once it has been calculated. */
  async add(shown: Sheet, asRead: Sheet): Promise<void> {
    const { api } = this.grid;
    const workbook = api.getActiveWorkbook();
    if (!this.#open || !workbook) throw new Error("No workbook is open.");
    const calculated = this.#nextCalculation();
    // Without an id of ours the engine gives it one of its own.
    const sheet = workbook.insertSheet(shown.name, { sheet: sheetSnapshot(shown, "", ROOM) });
    const among = (sheets: readonly Sheet[], one: Sheet) => [...sheets.filter(({ name }) => name !== one.name), one];
    const { sizes } = this.#open;
    this.#open = {
      ...this.#open,
      asRead: { ...this.#open.asRead, sheets: among(this.#open.asRead.sheets, asRead) },
      shown: { ...this.#open.shown, sheets: among(this.#open.shown.sheets, shown) },
      sizes: new Map([...sizes, [shown.name, sizeOf(sheet)]]),
    };
    dressEdges(sheet);
    api.getFormula().executeCalculation();
    await calculated;
    growRows(sheet, shown);
  }

  #nextCalculation(): Promise<void> {
    return new Promise((resolve) => {
      const stop = this.onCalculated(() => {
        stop();
        resolve();
      });
    });
  }

  /** Another cell, sheet or workbook. Returns the way to stop. */
  onMoved(listener: Listener): Listener {
    this.#moved.add(listener);
    return () => this.#moved.delete(listener);
  }

  /** Cells have new values. Returns the way to stop. */
  onCalculated(listener: Listener): Listener {
    this.#calculated.add(listener);
    return () => this.#calculated.delete(listener);
  }

  /** Tells that another cell is selected, where the engine does not. */
  moved(): void {
    tell(this.#moved);
  }

  /** As it was read, with its names and tables. Undefined until a workbook is open. */
  get asRead(): Book | undefined {
    return this.#open?.asRead;
  }

  /** As the grid got it, in the engine's words. */
  get shown(): Book | undefined {
    return this.#open?.shown;
  }

  /** A sheet's size when it was opened. */
  sizeAtFirst(sheet: string): Size | undefined {
    return this.#open?.sizes.get(sheet);
  }

  get view(): GridView | undefined {
    return this.#open?.view;
  }

  /** The cell that is selected. */
  get place(): Place | undefined {
    const sheet = this.#open && this.grid.api.getActiveWorkbook()?.getActiveSheet();
    const range = sheet?.getActiveRange();
    return sheet && range ? { sheet: sheet.getSheetName(), row: range.getRow(), column: range.getColumn() } : undefined;
  }
}

const sizeOf = (sheet: FWorksheet): Size => ({ rows: sheet.getMaxRows(), columns: sheet.getMaxColumns() });

const tell = (listeners: ReadonlySet<Listener>): void => {
  for (const listener of [...listeners]) listener();
};
