import type { Node } from "@borgar/fx";
import type { Edit } from "./engine-formula";
import { visit } from "./formula-tree";

type Literal = Node & { raw?: string };
type Found = Node & { operator?: string; arguments?: Node[]; elements?: Literal[][] };

/** Literals that the engine misreads, in words that it reads well: a text with a comma in an array constant, a minus before a text. */
export const literalEdits = (tree: Node, formula: string): Edit[] => {
  const edits: Edit[] = [];
  visit(tree, (node) => {
    const { type, operator, arguments: operands, elements, loc: [from = 0, to = 0] = [] } = node as Found;
    const text = (part: Node | undefined) => formula.slice(part?.loc?.[0] ?? 0, part?.loc?.[1] ?? 0);
    if (type === "ArrayExpression" && elements?.flat().some((element) => /^".*[,;{}"].*"$/s.test(text(element)))) {
      const rows = elements.map((row) => `HSTACK(${row.map(text).join(",")})`);
      edits.push({ at: from, put: `VSTACK(${rows.join(",")})`, drop: to - from });
    }
    if (type === "UnaryExpression" && operator === "-" && text(operands?.[0]).startsWith('"'))
      edits.push({ at: from, put: `(0-${text(operands?.[0])})`, drop: to - from });
  });
  return edits;
};

/** A number as the engine joins it to text: it would keep the letters of "1.0" and "1E3" as they were typed. */
export const numberLiteral = (typed: string): string => {
  const plain = String(Number(typed));
  return /^\d+(\.\d+)?$/.test(plain) ? plain : typed;
};
