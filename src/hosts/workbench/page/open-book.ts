import { IUndoRedoService, LifecycleService, LifecycleStages } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Book, Sheet } from "../../engine/book";
import { type GridView, viewOf } from "../../engine/grid-view";
import type { Place } from "../../engine/place";
import { ROOM, sheetSnapshot, snapshotOf } from "../../engine/snapshot";
import { dressEdges, growRows, usualLook, withUsualLook } from "./dress-sheet";
import { inPresentNames, namesOf, type Opened, type Size, sizesOf, withSheet } from "./opened";
import type { Grid } from "./start-grid";

type Listener = () => void;

/** The workbook that lies open in the grid, and the cell that is selected in it. */
export class OpenBook {
  readonly #moved = new Set<Listener>();
  readonly #calculated = new Set<Listener>();
  #open: Opened | undefined;
  #settled: unknown = null;

  constructor(readonly grid: Grid) {
    const { api } = grid;
    // The engine tells in the middle of what it does, and a listener that looks around then finds half of it done.
    const moved = () => queueMicrotask(() => tell(this.#moved));
    const calculated = () => tell(this.#calculated);
    // The engine keeps the first moves after a workbook is opened from one event or another; together they miss none.
    api.addEvent(api.Event.SelectionChanged, moved);
    api.addEvent(api.Event.CellClicked, moved);
    api.addEvent(api.Event.ActiveSheetChanged, moved);
    api.addEvent(api.Event.SheetCreated, moved);
    api.addEvent(api.Event.SheetDeleted, moved);
    api.addEvent(api.Event.SheetNameChanged, moved);
    api.addEvent(api.Event.SheetValueChanged, calculated);
    api.getFormula().calculationEnd(calculated);
  }

  /** Shows another workbook, `asRead` in the engine's words; resolves once it has been calculated. What was open is given up. */
  async open(book: Book, asRead: Book): Promise<void> {
    const { api, univer } = this.grid;
    const before = this.#open?.unit;
    this.#open = undefined;
    const snapshot = withUsualLook(snapshotOf(book));
    const calculated = this.#nextCalculation();
    const workbook = api.createWorkbook(snapshot);
    // Only now: the engine's own parts look for a workbook at any time.
    if (before !== undefined) api.disposeUnit(before);
    workbook.onSelectionChange(() => tell(this.#moved));
    const sheets = workbook.getSheets();
    this.#open = {
      unit: snapshot.id,
      asRead,
      shown: book,
      view: viewOf(univer, snapshot.id),
      sizes: new Map(sizesOf(sheets)),
      names: new Map(namesOf(sheets)),
    };
    // The engine says nothing at the end of a calculation of nothing.
    if (book.sheets.some(({ cells }) => cells.some(({ formula }) => formula !== undefined))) await calculated;
    // The first workbook is drawn a little after it is there.
    await univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered);
    sheets.forEach((sheet, i) => {
      dressEdges(sheet);
      if (book.sheets[i]) growRows(sheet, book.sheets[i]);
    });
    // What the page did to show the workbook is nothing that a person would take back.
    univer.__getInjector().get(IUndoRedoService).clearUndoRedo(snapshot.id);
    this.settle();
    this.moved();
  }

  /** Puts one more sheet behind the others, `asRead` in the engine's words; resolves once it has been calculated. */
  async add(shown: Sheet, asRead: Sheet): Promise<void> {
    const { api } = this.grid;
    const workbook = api.getActiveWorkbook();
    if (!this.#open || !workbook) throw new Error("No workbook is open.");
    const calculated = this.#nextCalculation();
    // Without an id of ours the engine gives it one of its own.
    const sheet = workbook.insertSheet(shown.name, {
      sheet: { ...sheetSnapshot(shown, "", ROOM), defaultStyle: usualLook },
    });
    this.#open = withSheet(this.#open, sheet, shown, asRead);
    dressEdges(sheet);
    api.getFormula().executeCalculation();
    await calculated;
    growRows(sheet, shown);
  }

  rename(sheet: string, name: string): void {
    this.#sheetCalled(sheet).setName(name);
    this.moved();
  }

  /** Deletes a sheet, once the one beside it has been brought into sight: the engine breaks off the deletion of the one in sight. */
  delete(name: string): void {
    const workbook = this.grid.api.getActiveWorkbook();
    const sheets = workbook?.getSheets() ?? [];
    const at = sheets.findIndex((sheet) => sheet.getSheetName() === name);
    const neighbour = sheets[at + 1] ?? sheets[at - 1];
    if (!workbook || !neighbour) throw new Error("A workbook keeps one sheet at least.");
    workbook.setActiveSheet(neighbour);
    if (!workbook.deleteSheet(this.#sheetCalled(name))) throw new Error(`The sheet ${name} could not be deleted.`);
    this.moved();
  }

  /** How wide the grid is drawn, in pixels. */
  get width(): number {
    return this.grid.container.clientWidth;
  }

  /** Whether anything was done since the workbook was opened or `settle` was called last. */
  get isChanged(): boolean {
    return this.#lastDeed() !== this.#settled;
  }

  /** What was done up to now is kept elsewhere. */
  settle(): void {
    this.#settled = this.#lastDeed();
  }

  #lastDeed(): unknown {
    return this.grid.univer.__getInjector().get(IUndoRedoService).pitchTopUndoElement();
  }

  /** The number format of a cell; "" where it has none of its own. */
  formatAt({ sheet, row, column }: Place): string {
    return this.#sheetCalled(sheet).getRange(row, column).getNumberFormat();
  }

  /** How many cells of a sheet hold something; what an answer spills into is not counted. */
  filledCells(name: string): number {
    let filled = 0;
    this.#sheetCalled(name)
      .getSheet()
      .getCellMatrix()
      .forValue((_row, _column, cell) => {
        if (cell && (cell.f || cell.si || (cell.v !== undefined && cell.v !== null && cell.v !== ""))) filled++;
      });
    return filled;
  }

  #sheetCalled(name: string): FWorksheet {
    const sheet = this.grid.api.getActiveWorkbook()?.getSheetByName(name);
    if (!sheet) throw new Error(`There is no sheet "${name}".`);
    return sheet;
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

  /** As it was read, with its names and tables, under the sheets' present names. Undefined until a workbook is open. */
  get asRead(): Book | undefined {
    return this.#present()?.asRead;
  }

  /** As the grid got it, in the engine's words. */
  get shown(): Book | undefined {
    return this.#present()?.shown;
  }

  /** A sheet's size when it was opened. */
  sizeAtFirst(sheet: string): Size | undefined {
    return this.#present()?.sizes.get(sheet);
  }

  #present(): Opened | undefined {
    const sheets = this.grid.api.getActiveWorkbook()?.getSheets() ?? [];
    if (this.#open) this.#open = inPresentNames(this.#open, sheets);
    return this.#open;
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

const tell = (listeners: ReadonlySet<Listener>): void => {
  for (const listener of [...listeners]) listener();
};
