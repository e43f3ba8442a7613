import { keptTag } from "./cell-text";
import { DYNAMIC, DYNAMIC_PROPERTIES, DYNAMIC_TYPE } from "./metadata";
import { type Splice, spliced } from "./splice";
import { type Opened, readXml } from "./xml";

/** A list of the part as it is written: where it begins and ends, and how many entries it has. */
interface WrittenList {
  readonly open: Opened;
  readonly closeFrom: number;
  readonly end: number;
  readonly entries: number;
}

/**
 * A metadata part of other kinds (stock prices, pictures in cells) that marks dynamic arrays too; everything that stands in it keeps its
 * number. Undefined when the part is written in a way that this cannot be sure of.
 */
export const withDynamicMark = (xml: string): { readonly xml: string; readonly mark: number } | undefined => {
  const lists = new Map<string, WrittenList>();
  const types: string[] = [];
  let root: { open: Opened; closeFrom: number } | undefined;
  let list: { key: string; open: Opened; entries: number } | undefined;
  let depth = 0;
  let largestType = 0;
  readXml(xml, "xl/metadata.xml", {
    open: (element) => {
      depth += 1;
      const { name, attributes } = element;
      if (depth === 1) root = { open: element, closeFrom: 0 };
      if (depth === 2) list = { key: keyOf(element), open: element, entries: 0 };
      if (depth === 3 && list) list.entries += 1;
      if (depth === 3 && name === "metadataType") types.push(attributes.name ?? "");
      if (name === "rc") largestType = Math.max(largestType, Number(attributes.t) || 0);
    },
    close: (_, from, to) => {
      if (depth === 2 && list) lists.set(list.key, { ...list, closeFrom: from, end: to });
      if (depth === 1 && root) root.closeFrom = from;
      depth -= 1;
    },
  });
  if (root?.open.name !== "metadata" || root.open.isSelfClosing) return undefined;
  // Records of a type that is not there would become records of the one that is added.
  if (largestType > types.length) return undefined;
  const splices: Splice[] = [];
  /** Adds an entry at the end of a list, or the list itself after those that come before it; gives the entry's place from 0. */
  const add = (key: string, opening: string, entry: string, after: readonly string[]): number => {
    const found = lists.get(key);
    if (!found) {
      const ends = [...lists].filter(([known]) => after.includes(known.split(" ")[0] ?? "")).map(([, { end }]) => end);
      const at = Math.max(root?.open.to ?? 0, ...ends);
      splices.push({ from: at, to: at, put: `<${opening} count="1">${entry}</${opening.split(" ")[0]}>` });
      return 0;
    }
    const { open, closeFrom, entries } = found;
    const tagged = keptTag(open.name, { ...open.attributes, count: String(entries + 1) });
    splices.push({
      from: open.from,
      to: open.to,
      put: open.isSelfClosing ? `${tagged}${entry}</${open.name}>` : tagged,
    });
    if (!open.isSelfClosing) splices.push({ from: closeFrom, to: closeFrom, put: entry });
    return entries;
  };
  const before = ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata"];
  const known = types.indexOf(DYNAMIC);
  const type = known >= 0 ? known : add("metadataTypes", "metadataTypes", DYNAMIC_TYPE, []);
  const value = add(`futureMetadata ${DYNAMIC}`, `futureMetadata name="${DYNAMIC}"`, DYNAMIC_PROPERTIES, before);
  const record = add("cellMetadata", "cellMetadata", `<bk><rc t="${type + 1}" v="${value}"/></bk>`, before);
  return { xml: spliced(xml, splices), mark: record + 1 };
};

const keyOf = ({ name, attributes }: Opened): string =>
  name === "futureMetadata" ? `${name} ${attributes.name ?? ""}` : name;
