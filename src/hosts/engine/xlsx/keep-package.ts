import type { AnyDefinition } from "../../../definition/define";
import { faultsIn } from "../calculate";
import type { GridView } from "../grid-view";
import { Spelling } from "../spelling";
import { editWorkbook } from "./edit-workbook";
import { type BookEdits, isEdited } from "./edits";
import { type OpenedWorkbook, openWorkbook } from "./open-workbook";
import { patchWorkbook } from "./patch-workbook";

/**
 * The package that a workbook came from, with what was changed in a grid and with the values that the grid calculated; every part that
 * holds none of these is what it was, byte for byte. `kept` are the places of formulas that the grid did not calculate: they keep their
 * values. Throws CannotKeep or UnreadableWorkbook when the package cannot be kept.
 */
export const keepPackage = (
  opened: OpenedWorkbook,
  edits: BookEdits,
  view: GridView,
  kept: Iterable<string>,
  catalogue: readonly AnyDefinition[],
): Uint8Array<ArrayBuffer> => {
  const spelling = new Spelling(catalogue);
  const isChanged = edits.added.length > 0 || edits.sheets.some(isEdited);
  const edited = isChanged ? openWorkbook(editWorkbook(opened, edits, spelling), catalogue) : opened;
  const left = new Set([...kept, ...faultsIn(edited.book, view, spelling).map(([place]) => place)]);
  return patchWorkbook(edited, view, { left }, spelling).bytes;
};
