import type { Sheet } from "../book";
import { CannotKeep } from "./cannot-keep";
import { keptTag } from "./cell-text";
import type { Draft } from "./draft";
import { OFFICE } from "./namespaces";
import { relationsOf } from "./parts";
import { type Splice, spliced } from "./splice";
import { SHEET_TYPE, tableXml } from "./write-workbook";
import { type Opened, readXml } from "./xml";

/** Puts sheets, whose parts are written already, behind those that a workbook has. */
export const addSheets = (draft: Draft, sheets: readonly (readonly [Sheet, xml: string])[]): void => {
  let table = mostTables(draft);
  for (const [sheet, xml] of sheets) {
    const part = draft.freePath(`${draft.folder}worksheets/`, "sheet");
    draft.add(part, `${SHEET_TYPE}.worksheet+xml`, xml);
    for (const one of sheet.tables ?? []) {
      table += 1;
      const path = draft.freePath(`${draft.folder}tables/`, "table");
      draft.add(path, `${SHEET_TYPE}.table+xml`, tableXml(one, table));
      draft.relate(part, `${OFFICE}/table`, `../tables/${path.slice(path.lastIndexOf("/") + 1)}`);
    }
    const target = part.slice(draft.folder.length);
    const id = draft.relate(draft.opened.workbookPart, `${OFFICE}/worksheet`, target);
    const { workbookPart } = draft.opened;
    draft.put(workbookPart, withSheet(draft.text(workbookPart), workbookPart, sheet.name, id));
  }
};

/** The largest number that a table has: no two of a workbook may have the same. */
const mostTables = ({ opened: { pack, sheetParts } }: Draft): number => {
  let most = 0;
  for (const sheet of sheetParts)
    for (const { type, target } of relationsOf(pack, sheet))
      if (type === "table" && pack.has(target))
        readXml(pack.text(target), target, {
          open: ({ name, attributes }) => {
            if (name === "table") most = Math.max(most, Number(attributes.id) || 0);
          },
        });
  return most;
};

/** The workbook's part with one more sheet in its list. */
const withSheet = (xml: string, part: string, name: string, id: string): string => {
  const listed: Opened[] = [];
  let root: Opened | undefined;
  const splices: Splice[] = [];
  let isInList = false;
  readXml(xml, part, {
    open: (element) => {
      root ??= element;
      if (element.name === "sheets") isInList = true;
      if (isInList && element.name === "sheet") listed.push(element);
    },
    close: (element, from) => {
      if (element !== "sheets") return;
      isInList = false;
      splices.push({ from, to: from, put: sheetTag(listed, name, id, root) });
    },
  });
  return spliced(xml, splices.slice(0, 1));
};

const sheetTag = (listed: readonly Opened[], name: string, id: string, root: Opened | undefined): string => {
  const isTaken = ({ attributes }: Opened) => attributes.name?.toLowerCase() === name.toLowerCase();
  if (listed.some(isTaken)) throw new CannotKeep(`it has a sheet ${name} that cannot be shown`);
  const number = listed.reduce((most, { attributes }) => Math.max(most, Number(attributes.sheetId) || 0), 0) + 1;
  // Some writers name the prefix of relations in each sheet's tag, or another one.
  const prefix = root?.attributes["xmlns:r"] === OFFICE ? {} : { "xmlns:r": OFFICE };
  return keptTag("sheet", { ...prefix, name, sheetId: String(number), "r:id": id }, "/>");
};
