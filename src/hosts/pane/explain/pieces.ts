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

/**
 * A line of TeX cut before each relation and after each comma that stand outside all brackets: "a = b = c" gives "a", "= b",
 * "= c". Set side by side they wrap in a narrow pane, where one piece of MathML would run out of it.
 */
export const piecesOf = (tex: string): string[] => {
  const pieces = [""];
  let depth = 0;
  for (const token of tex.match(/\\[a-zA-Z]+|\\.|\s+|[^\\\s]/gs) ?? []) {
    if (depth === 0 && relations.includes(token) && pieces.at(-1)?.trim()) pieces.push("");
    // \left( … \right) would count twice: their brackets are plain ones too, and balance all the same.
    if (opening.test(token)) depth++;
    if (closing.test(token)) depth = Math.max(0, depth - 1);
    pieces[pieces.length - 1] += token;
    if (depth === 0 && token === ",") pieces.push("");
  }
  return pieces.map((piece) => piece.trim().replace(/^\\q?quad\b\s*/, "")).filter(Boolean);
};
