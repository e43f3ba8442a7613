import type { Book } from "./book";

/** The engine's own name for where a snapshot keeps its defined names. */
export const NAMES_RESOURCE = "SHEET_DEFINED_NAME_PLUGIN";

/** A workbook's defined names as the engine loads them. A name known on one sheet alone carries that sheet's id. */
export const namesResource = (book: Book, unit: string): string =>
  JSON.stringify(
    Object.fromEntries(
      (book.names ?? []).map(({ name, formula, sheet }, place) => {
        const index = book.sheets.findIndex((candidate) => candidate.name === sheet);
        const id = `name-${place + 1}`;
        return [
          id,
          {
            id,
            unitId: unit,
            name,
            formulaOrRefString: formula,
            localSheetId: index < 0 ? "AllDefaultWorkbook" : `sheet-${index + 1}`,
          },
        ];
      }),
    ),
  );
