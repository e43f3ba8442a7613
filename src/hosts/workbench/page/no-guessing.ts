import { CellValueType, type Univer } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { gridFormula } from "../../engine/grid-formula";
import { asText } from "./typed-value";

/** "0,157" would become 157, and "5 A" five in the morning. */
const guessedAt = /^[+-]?\d*,\d+$|^\d+(\.\d+)?\s?[ap]$/i;

/** Before the engine's own reading of what was typed, which is not numbered. */
const first = 1000;

/** What is typed into a cell and would be guessed at stays text, as when it is pasted: what asks for a number says so. */
export const guessNothing = (univer: Univer): void => {
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
      priority: first,
      handler: (cell, _context, next) => {
        // Without "next" the engine reads no further.
        if (typeof cell?.v === "string" && guessedAt.test(cell.v.trim())) return { ...cell, t: CellValueType.STRING };
        if (!cell?.f) return next(cell);
        const f = gridFormula(cell.f);
        return f === undefined ? { ...cell, ...asText(cell.f) } : next({ ...cell, f });
      },
    });
};
