import { hasFormulas } from "../book";
import type { Spelling } from "../spelling";
import { addSheets } from "./added-sheets";
import { CannotKeep } from "./cannot-keep";
import { Draft } from "./draft";
import { type BookEdits, isEdited } from "./edits";
import type { OpenedWorkbook } from "./open-workbook";
import { type DynamicMark, dropCalculationOrder, dynamicMark } from "./package-edits";
import { withChanges } from "./patch-workbook";
import { editSheet, inlineText } from "./sheet-edit";
import { StylesPart } from "./styles-part";
import { sheetXml } from "./write-sheet";

/**
 * The workbook's package with edits made: only the cells, rows and columns that they name differ, and what these need (looks behind those
 * that are there, the mark of dynamic arrays, parts of sheets that are added). Cached values elsewhere stay: see `patchWorkbook`. Throws
 * CannotKeep where something would have to be added to a part that is written in a way of its own.
 */
export const editWorkbook = (opened: OpenedWorkbook, edits: BookEdits, spelling: Spelling): Uint8Array<ArrayBuffer> => {
  const { pack, sheetParts } = opened;
  let dynamic: DynamicMark | undefined;
  const mark = (): number => {
    dynamic ??= dynamicMark(opened);
    if (!dynamic) throw new CannotKeep("its metadata are written in a way that nothing can be added to");
    return dynamic.mark;
  };
  const styles = new StylesPart(opened);
  const wording = { spelling, mark, textOf: inlineText, numberOf: styles.numberOf, changed: styles.changed };
  let hasOtherFormulas = hasFormulas({ sheets: edits.added });
  const edited = edits.sheets.flatMap((sheet, place): [string, string][] => {
    const part = sheetParts[place];
    if (part === undefined || !isEdited(sheet)) return [];
    const written = editSheet(pack.text(part), part, sheet, wording);
    hasOtherFormulas ||= written.hasOtherFormulas;
    return [[part, written.xml]];
  });
  const added = edits.added.map((sheet) => [sheet, sheetXml(sheet, false, wording)] as const);
  const draft = new Draft(opened, [...(dynamic?.changes ?? []), ...edited]);
  addSheets(draft, added);
  styles.putInto(draft);
  // The list of the order of calculation may neither name a cell without a formula nor leave one out.
  const changes = hasOtherFormulas ? dropCalculationOrder(opened, draft.changes) : draft.changes;
  return withChanges(pack.entries, changes);
};
