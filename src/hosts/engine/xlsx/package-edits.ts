import { tag } from "./cell-text";
import { METADATA_RELATION, METADATA_TYPE, metadataPart } from "./metadata";
import type { OpenedWorkbook } from "./open-workbook";
import { relationsOf } from "./parts";
import { type Splice, spliced } from "./splice";
import { type Opened, readXml } from "./xml";

type Changes = ReadonlyMap<string, string>;

const TYPES = "[Content_Types].xml";
const folderOf = (part: string): string => part.slice(0, part.lastIndexOf("/") + 1);
const relationsPart = (part: string): string => `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;

/** Adds the part that marks dynamic arrays to a workbook that has none. */
export const addMetadata = ({ pack, workbookPart }: OpenedWorkbook, changes: Changes): Changes => {
  const part = `${folderOf(workbookPart)}metadata.xml`;
  const ids = new Set(relationsOf(pack, workbookPart).map(({ id }) => id));
  let number = ids.size + 1;
  while (ids.has(`rId${number}`)) number += 1;
  const relation = tag("Relationship", { Id: `rId${number}`, Type: METADATA_RELATION, Target: "metadata.xml" }, "/>");
  const override = tag("Override", { PartName: `/${part}`, ContentType: METADATA_TYPE }, "/>");
  const relations = relationsPart(workbookPart);
  return new Map([
    ...changes,
    [part, metadataPart],
    [relations, beforeEnd(changes.get(relations) ?? pack.text(relations), relations, relation)],
    [TYPES, beforeEnd(changes.get(TYPES) ?? pack.text(TYPES), TYPES, override)],
  ]);
};

/**
 * Takes out the part that lists the order of calculation; a spreadsheet makes it anew. It may not list a formula that has become one of
 * another kind. A part that becomes "" is left out of the package.
 */
export const dropCalculationOrder = ({ pack, workbookPart }: OpenedWorkbook, changes: Changes): Changes => {
  const order = relationsOf(pack, workbookPart).find(({ type }) => type === "calcChain");
  if (!order) return changes;
  const relations = relationsPart(workbookPart);
  const without = (part: string, isIt: (element: Opened) => boolean): string => {
    const xml = changes.get(part) ?? pack.text(part);
    const splices: Splice[] = [];
    readXml(xml, part, {
      open: (element) => {
        if (isIt(element)) splices.push({ from: element.from, to: element.to, put: "" });
      },
    });
    return spliced(xml, splices);
  };
  return new Map([
    ...changes,
    [pack.entry(order.target).name, ""],
    [relations, without(relations, ({ attributes }) => attributes.Id === order.id)],
    [
      TYPES,
      without(TYPES, ({ attributes }) => attributes.PartName?.toLowerCase() === `/${order.target}`.toLowerCase()),
    ],
  ]);
};

const beforeEnd = (xml: string, part: string, element: string): string => {
  let end = xml.length;
  readXml(xml, part, {
    close: (_, from) => {
      end = from;
    },
  });
  return spliced(xml, [{ from: end, to: end, put: element }]);
};
