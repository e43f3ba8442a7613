const relations = [
  "=",
  "<",
  ">",
  "\\approx",
  "\\leq",
  "\\geq",
  "\\le",
  "\\ge",
  "\\Rightarrow",
  "\\to",
  "\\quad",
  "\\qquad",
];
const opening = /^(\{|\[|\(|\\left|\\begin)/;
const closing = /^(\}|\]|\)|\\right|\\end)/;

/** About as many characters as the narrowest pane has room for. */
const widest = 34;

/** About as many characters as a left side may have that stays with its relation. */
const shortest = 8;

/**
 * A line of TeX cut before each relation and after each comma that stand outside all brackets: "a = b = c" gives "a", "= b",
 * "= c". Set side by side they wrap in a narrow pane, where one piece of MathML would run out of it.
 */
export const piecesOf = (tex: string): string[] =>
  joinedToLeft(cut(tex, (token) => relations.includes(token))).flatMap((piece) =>
    // A long sum goes on in the next line too. The empty braces make its plus one between two terms.
    lengthOf(piece) > widest
      ? cut(piece, (token, before) => token === "+" && !/^=?$/.test(before)).map(plusOfTwo)
      : [piece],
  );

/** A short left side stays with its relation, so that no line ends in "h" and the next begins with "= 2". */
const joinedToLeft = (pieces: readonly string[]): string[] => {
  const joined: string[] = [];
  pieces.forEach((piece, i) => {
    const left = pieces[i - 1];
    const isLeft = left !== undefined && !isRelation(left) && !left.endsWith(",") && lengthOf(left) <= shortest;
    if (isLeft && isRelation(piece) && lengthOf(left) + lengthOf(piece) <= widest)
      joined[joined.length - 1] = `${left} ${piece}`;
    else joined.push(piece);
  });
  return joined;
};

const isRelation = (piece: string): boolean => relations.some((relation) => piece.startsWith(relation));

/** Whether a line has a piece that no cut makes short enough. */
export const isWide = (tex: string): boolean => piecesOf(tex).some((piece) => lengthOf(piece) > widest - 8);

const plusOfTwo = (piece: string): string => (piece.startsWith("+") ? `{}${piece}` : piece);

/** How many characters of a line are seen, more or less: commands are names of signs, braces are not seen. */
const lengthOf = (tex: string): number =>
  tex
    .replace(/\\(left|right|mathrm|text|displaystyle|,|;|!|quad)/g, "")
    .replace(/\\[a-zA-Z]+/g, "x")
    .replace(/[{}\s]/g, "").length;

/** Cuts before the tokens outside all brackets that `isCut` names, and after each comma there. */
const cut = (tex: string, isCut: (token: string, before: string) => boolean): string[] => {
  const pieces = [""];
  let depth = 0;
  for (const token of tex.match(/\\[a-zA-Z]+|\\.|\s+|[^\\\s]/gs) ?? []) {
    const before = pieces.at(-1)?.trim() ?? "";
    if (depth === 0 && isCut(token, before) && before) pieces.push("");
    // \left( … \right) would count twice: their brackets are plain ones too, and balance all the same.
    if (opening.test(token)) depth++;
    if (closing.test(token)) depth = Math.max(0, depth - 1);
    pieces[pieces.length - 1] += token;
    if (depth === 0 && token === ",") pieces.push("");
  }
  return pieces.map((piece) => piece.trim().replace(/^\\q?quad\b\s*/, "")).filter(Boolean);
};
