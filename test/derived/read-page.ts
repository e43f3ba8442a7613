import { parse, type DefaultTreeAdapterTypes as Tree } from "parse5";

/** A page as a parser of the HTML standard reads it. */
export interface Read {
  readonly faults: readonly string[];
  readonly elements: readonly Tree.Element[];
  /** All text, as one line. */
  readonly text: string;
}

const isElement = (node: Tree.Node): node is Tree.Element => "tagName" in node;

export const attribute = (element: Tree.Element, name: string): string | undefined =>
  element.attrs.find((one) => one.name === name)?.value;

export const plain = (text: string): string => text.replace(/\s+/g, " ").trim();

export const textOf = (node: Tree.Node): string =>
  "value" in node ? node.value : "childNodes" in node ? node.childNodes.map(textOf).join("") : "";

/** All elements of a node, itself first, in the order of the page. */
export const within = (node: Tree.Node): readonly Tree.Element[] => [
  ...(isElement(node) ? [node] : []),
  ...("childNodes" in node ? node.childNodes.flatMap(within) : []),
];

export const read = (html: string): Read => {
  const faults: string[] = [];
  const tree = parse(html, { sourceCodeLocationInfo: true, onParseError: ({ code }) => faults.push(code) });
  return { faults, elements: within(tree), text: plain(textOf(tree)) };
};

/** Words of a cell stand between backticks in a definition and in <code> on a page. */
export const shown = (text: string): string => plain(text.replaceAll("`", ""));
