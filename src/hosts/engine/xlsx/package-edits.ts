import { keptTag } from "./cell-text";
import { METADATA_RELATION, METADATA_TYPE, metadataPart } from "./metadata";
import { withDynamicMark } from "./metadata-merge";
import type { OpenedWorkbook } from "./open-workbook";
import { relationsOf } from "./parts";
import { type Splice, spliced } from "./splice";
import { type Opened, readXml } from "./xml";

type Changes = ReadonlyMap<string, string>;

export const TYPES = "[Content_Types].xml";
export const folderOf = (part: string): string => part.slice(0, part.lastIndexOf("/") + 1);
export const relationsPart = (part: string): string =>
  `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;

/** What the list of a package's parts says of one of them. */
export const overrideOf = (part: string, type: string): string =>
  keptTag("Override", { PartName: `/${part}`, ContentType: type }, "/>");

/** What a part's relations say of one of them. */
export const relationOf = (id: string, type: string, target: string): string =>
  keptTag("Relationship", { Id: id, Type: type, Target: target }, "/>");

/** What a cell's `cm` is to be so that its formula is a dynamic array, and the parts that must be changed for it. */
export interface DynamicMark {
  readonly mark: number;
  readonly changes: Changes;
}

/**
 * Undefined when the workbook's metadata are written in a way that nothing can be added to, or when cells refer to records that are not
 * there: a new one would speak of them too.
 */
export const dynamicMark = (opened: OpenedWorkbook): DynamicMark | undefined => {
  const [mark] = opened.dynamicMarks;
  if (mark !== undefined) return { mark, changes: new Map() };
  const made = newMark(opened);
  return made && made.mark > opened.largestMark ? made : undefined;
};

const newMark = (opened: OpenedWorkbook): DynamicMark | undefined => {
  const { pack, workbookPart } = opened;
  const written = relationsOf(pack, workbookPart).find(({ type }) => type === "sheetMetadata")?.target;
  if (written === undefined || !pack.has(written)) return { mark: 1, changes: addMetadata(opened) };
  const merged = withDynamicMark(pack.text(written));
  return merged && { mark: merged.mark, changes: new Map([[written, merged.xml]]) };
};

/** Adds the part that marks dynamic arrays to a workbook that has none. */
const addMetadata = ({ pack, workbookPart }: OpenedWorkbook): Changes => {
  const folder = folderOf(workbookPart);
  const name = firstFree("metadata", ".xml", (candidate) => pack.has(`${folder}${candidate}`));
  const ids = new Set(relationsOf(pack, workbookPart).map(({ id }) => id));
  const id = firstFree("rIdMetadata", "", (candidate) => ids.has(candidate));
  const relations = relationsPart(workbookPart);
  return new Map([
    [`${folder}${name}`, metadataPart],
    [relations, beforeEnd(pack.text(relations), relations, relationOf(id, METADATA_RELATION, name))],
    [TYPES, beforeEnd(pack.text(TYPES), TYPES, overrideOf(`${folder}${name}`, METADATA_TYPE))],
  ]);
};

export const firstFree = (name: string, ending: string, isTaken: (candidate: string) => boolean): string => {
  let number = 1;
  const candidate = () => `${name}${number === 1 ? "" : number}${ending}`;
  while (isTaken(candidate())) number += 1;
  return candidate();
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

export const beforeEnd = (xml: string, part: string, element: string): string => {
  let end = xml.length;
  readXml(xml, part, {
    close: (_, from) => {
      end = from;
    },
  });
  return spliced(xml, [{ from: end, to: end, put: element }]);
};
