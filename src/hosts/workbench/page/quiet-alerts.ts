import { CellAlertManagerService, type ICellAlert } from "@univerjs/sheets-ui";

/** Where the engine would put a note: its own id of the sheet, and the cell. */
export type NotePlace = Pick<ICellAlert["location"], "subUnitId" | "row" | "col">;

/**
 * The engine's notes beside cells with an error, less those on our refusals: there it would say "Error in value", where the
 * page shows the refusal's own sentence.
 */
export const alertsBut = (isOurs: (place: NotePlace) => boolean): typeof CellAlertManagerService =>
  class extends CellAlertManagerService {
    override showAlert(alert: ICellAlert): void {
      if (!isOurs(alert.location)) super.showAlert(alert);
    }
  };
