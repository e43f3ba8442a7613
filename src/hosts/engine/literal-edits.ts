import type { Node } from "@borgar/fx";
import type { Edit } from "./formula-edits";
import { visit } from "./formula-tree";

type Literal = Node & { raw?: string };
type Found = Node & { operator?: string; arguments?: Node[]; elements?: Literal[][] };

/** Literals that the engine misreads, in words that it reads well: a text with a comma or a digit in an array constant, a minus before a text. */
export const literalEdits = (tree: Node, formula: string): Edit[] => {
  const edits: Edit[] = [];
  visit(tree, (node) => {
    const { type, operator, arguments: operands, elements, loc: [from = 0, to = 0] = [] } = node as Found;
    const text = (part: Node | undefined) => formula.slice(part?.loc?.[0] ?? 0, part?.loc?.[1] ?? 0);
    if (type === "ArrayExpression" && elements?.flat().some((element) => /^".*[\d,;{}"].*"$/s.test(text(element)))) {
      const rows = elements.map((row) => `HSTACK(${row.map(text).join(",")})`);
      edits.push({ at: from, put: `VSTACK(${rows.join(",")})`, drop: to - from });
    }
    if (type === "UnaryExpression" && operator === "-" && text(operands?.[0]).startsWith('"'))
      edits.push({ at: from, put: `(0-${text(operands?.[0])})`, drop: to - from });
  });
  return edits;
};

/** A number as the engine knows one again: it takes "1.0" and "1E3" for texts, and joins them to others with the letters as typed. */
export const numberLiteral = (typed: string): string => String(Number(typed));
