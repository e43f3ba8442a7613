import type { Book } from "./book";
import { enclosed } from "./readable-names";

/** The engine's own name for where a snapshot keeps its defined names. */
export const NAMES_RESOURCE = "SHEET_DEFINED_NAME_PLUGIN";

/** The names that a whole workbook knows, as the engine loads them for formulas that are typed into the grid. */
export const namesResource = (book: Book, unit: string): string =>
  JSON.stringify(
    Object.fromEntries(
      (book.names ?? []).map(({ name, formula }, place) => {
        const id = `name-${place + 1}`;
        return [
          id,
          { id, unitId: unit, name, formulaOrRefString: enclosed(formula), localSheetId: "AllDefaultWorkbook" },
        ];
      }),
    ),
  );
