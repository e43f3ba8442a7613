// Cuts XML by its brackets alone, so that a comparison rests on nothing that the program reads files with.

const piece = /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>|<(?:"[^"]*"|'[^']*'|[^>"'])*>|[^<]+/g;

/** Every tag, text, remark and instruction of a well-formed text; joined, they are that text. */
export const tokensOf = (xml: string): string[] => {
  const tokens = xml.match(piece) ?? [];
  if (!isCut(xml)) throw new Error("This XML could not be cut without loss.");
  return tokens;
};

/** Whether a text can be cut so; one that is not well-formed may not. */
export const isCut = (xml: string): boolean => (xml.match(piece) ?? []).join("") === xml;

/** A tag's name without the prefix of its namespace. */
export const tagName = (token: string): string => /^<\/?(?:[^\s/>!?:]+:)?([^\s/>!?]+)/.exec(token)?.[1] ?? "";
export const isOpening = (token: string): boolean => /^<[^/!?]/.test(token);
export const isClosing = (token: string): boolean => token.startsWith("</");
export const isEmptyTag = (token: string): boolean => isOpening(token) && token.endsWith("/>");

/** The attributes of a tag, in the order in which they stand. */
export const attributesOf = (token: string): [name: string, value: string][] =>
  [...token.matchAll(/\s([^\s=/>]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)].map(([, name = "", double, single]) => [
    name,
    double ?? single ?? "",
  ]);

export const attribute = (token: string, name: string): string | undefined =>
  attributesOf(token).find(([known]) => known === name)?.[1];

/** A value without the references of XML. */
export const unescaped = (value: string): string =>
  value
    .replace(/&#(x?)([\da-f]+);/gi, (_, hex, digits) => String.fromCodePoint(Number.parseInt(digits, hex ? 16 : 10)))
    .replace(/&(lt|gt|quot|apos);/g, (_, name) => ({ lt: "<", gt: ">", quot: '"', apos: "'" })[name as "lt"])
    .replaceAll("&amp;", "&");

/** A run of tokens as the pieces at its own level: each an element with all that is in it, or what stands between. */
export const piecesOf = (tokens: readonly string[]): string[][] => {
  const pieces: string[][] = [];
  let depth = 0;
  for (const token of tokens) {
    if (depth === 0) pieces.push([]);
    pieces.at(-1)?.push(token);
    if (isOpening(token) && !isEmptyTag(token)) depth += 1;
    if (isClosing(token)) depth -= 1;
  }
  return pieces;
};
