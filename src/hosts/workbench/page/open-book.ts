import { IUndoRedoService, LifecycleService, LifecycleStages } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { type Book, hasFormulas, type Sheet } from "../../engine/book";
import { type GridView, viewOf } from "../../engine/grid-view";
import type { Place } from "../../engine/place";
import { ROOM, sheetSnapshot, snapshotOf } from "../../engine/snapshot";
import { dressEdges, growRows, usualLook, withUsualLook } from "./dress-sheet";
import { Listeners } from "./listeners";
import { inPresentNames, namesOf, type Opened, type Size, sizesOf, withSheet } from "./opened";
import type { Grid } from "./start-grid";

/** The workbook that lies open in the grid, and the cell that is selected in it. */
export class OpenBook {
  readonly #moved = new Listeners();
  readonly #calculated = new Listeners();
  #open: Opened | undefined;
  #settled: unknown = null;

  constructor(readonly grid: Grid) {
    const { api } = grid;
    // The engine tells in the middle of what it does, and a listener that looks around then finds half of it done.
    const moved = () => queueMicrotask(() => this.#moved.tell());
    const calculated = () => this.#calculated.tell();
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
    const calculated = this.#calculated.next();
    const workbook = api.createWorkbook(snapshot);
    // Only now: the engine's own parts look for a workbook at any time.
    if (before !== undefined) api.disposeUnit(before);
    workbook.onSelectionChange(() => this.#moved.tell());
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
    if (hasFormulas(book)) await calculated;
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
    const calculated = this.#calculated.next();
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
    return this.sheetCalled(sheet).getRange(row, column).getNumberFormat();
  }

  /** Throws where the workbook has no such sheet. */
  sheetCalled(name: string): FWorksheet {
    const sheet = this.grid.api.getActiveWorkbook()?.getSheetByName(name);
    if (!sheet) throw new Error(`There is no sheet "${name}".`);
    return sheet;
  }

  /** Another cell, sheet or workbook. Returns the way to stop. */
  onMoved(listener: () => void): () => void {
    return this.#moved.add(listener);
  }

  /** Cells have new values. Returns the way to stop. */
  onCalculated(listener: () => void): () => void {
    return this.#calculated.add(listener);
  }

  /** Tells that another cell is selected, where the engine does not. */
  moved(): void {
    this.#moved.tell();
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
