import {
  CommandType,
  type ICommandInfo,
  ICommandService,
  IUniverInstanceService,
  UndoCommandId,
  type Univer,
  type Workbook,
} from "@univerjs/core";

/** What was put somewhere else on a sheet: whole rows or columns, or some cells. */
export type Moved = "lines" | "cells";

interface Step {
  readonly unit: string;
  readonly sheets: readonly string[];
  readonly id: string;
  /** Two steps of one stretch and opposite kinds undo each other. */
  readonly stretch: string;
  /** Rows or columns behind the last move nothing. */
  readonly isHarmless: boolean;
}

const opposites: Readonly<Record<string, string>> = {
  "sheet.mutation.insert-row": "sheet.mutation.remove-rows",
  "sheet.mutation.remove-rows": "sheet.mutation.insert-row",
  "sheet.mutation.insert-col": "sheet.mutation.remove-col",
  "sheet.mutation.remove-col": "sheet.mutation.insert-col",
  "sheet.mutation.move-rows": "sheet.mutation.move-rows",
  "sheet.mutation.move-columns": "sheet.mutation.move-columns",
  "sheet.mutation.move-range": "sheet.mutation.move-range",
};

/** Remembers what was moved on the sheets of the grid and not taken back. */
export class Moves {
  #steps: readonly Step[] = [];
  #isUndoing = false;

  constructor(readonly univer: Univer) {
    const commands = univer.__getInjector().get(ICommandService);
    commands.beforeCommandExecuted(({ id, type }) => {
      if (type === CommandType.COMMAND) this.#isUndoing = id === UndoCommandId;
    });
    commands.onCommandExecuted((done) => {
      if (done.id in opposites) this.#take(done);
      else if (done.id === UndoCommandId) this.#isUndoing = false;
    });
  }

  /** What was moved on a sheet since its workbook was opened; sheets go by the grid's ids. */
  on(unit: string, sheet: string): Moved | undefined {
    const steps = this.#steps.filter((step) => step.unit === unit && step.sheets.includes(sheet) && !step.isHarmless);
    if (steps.length === 0) return undefined;
    return steps.every(({ id }) => id === "sheet.mutation.move-range") ? "cells" : "lines";
  }

  #take({ id, params }: Readonly<ICommandInfo>): void {
    const step = this.#stepOf(id, params as Parameters);
    const last = this.#steps.filter(({ unit }) => unit === step.unit).at(-1);
    const isTakenBack =
      this.#isUndoing && last?.id === opposites[id] && (last?.stretch === step.stretch || opposites[id] === id);
    this.#steps = isTakenBack ? this.#steps.filter((one) => one !== last) : [...this.#steps, step];
  }

  #stepOf(id: string, { unitId, subUnitId, range, from, to }: Parameters): Step {
    const ids = [subUnitId, from?.subUnitId, to?.subUnitId].filter((sheet) => sheet !== undefined);
    const sheet = this.univer
      .__getInjector()
      .get(IUniverInstanceService)
      .getUnit<Workbook>(unitId)
      ?.getSheetBySheetId(ids[0] ?? "");
    const isHarmless =
      (id === "sheet.mutation.insert-row" && range?.endRow === (sheet?.getRowCount() ?? 0) - 1) ||
      (id === "sheet.mutation.insert-col" && range?.endColumn === (sheet?.getColumnCount() ?? 0) - 1);
    const { startRow, endRow, startColumn, endColumn } = range ?? {};
    const stretch = (/row/.test(id) ? [startRow, endRow] : [startColumn, endColumn]).join(" ");
    return { unit: unitId, sheets: ids, id, stretch, isHarmless };
  }
}

/** What the engine says of such a step. */
interface Parameters {
  readonly unitId: string;
  readonly subUnitId?: string;
  readonly range?: Readonly<Record<"startRow" | "endRow" | "startColumn" | "endColumn", number>>;
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
}
