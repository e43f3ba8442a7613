import type { IWorkbookData } from "@univerjs/core";
import type { DefinedName } from "../../engine/book";
import { type GridView, viewOf } from "../../engine/grid-view";
import type { Moved, Moves } from "./moves";
import type { OpenBook } from "./open-book";

/** All that lies in the grid, for those who write it down: a copy, through which nothing is changed. */
export interface GridState extends Pick<OpenBook, "asRead" | "shown" | "sizeAtFirst"> {
  readonly data: IWorkbookData;
  readonly view: GridView;
  readonly names: readonly DefinedName[];
  /** What was moved on a sheet since it was opened, by the grid's id of the sheet. */
  movedOn(sheet: string): Moved | undefined;
}

export const stateOf = (open: OpenBook, moves: Moves): GridState => {
  const { grid, asRead, shown } = open;
  const workbook = grid.api.getActiveWorkbook();
  if (!workbook || !shown) throw new Error("No workbook is open.");
  const data = workbook.save();
  const names = workbook.getDefinedNames().map((name): DefinedName => {
    const sheet = data.sheets[name.getLocalSheetId() ?? ""]?.name;
    return { name: name.getName(), formula: name.getFormulaOrRefString(), ...(sheet !== undefined && { sheet }) };
  });
  return {
    data,
    names,
    asRead,
    shown,
    view: viewOf(grid.univer, workbook.getId(), true),
    sizeAtFirst: (sheet) => open.sizeAtFirst(sheet),
    movedOn: (sheet) => moves.on(workbook.getId(), sheet),
  };
};
