import { type Node, parseA1Ref } from "@borgar/fx";
import type { Edit } from "./formula-edits";

type Operation = Node & { operator?: string; arguments?: Node[]; callee?: { name?: string }; value?: unknown };

/** Functions that take an expression as a whole array even in a one-cell formula. */
const wholeArrays: ReadonlySet<string> = new Set(
  "SUMPRODUCT MMULT MINVERSE MDETERM TRANSPOSE FREQUENCY LINEST LOGEST TREND GROWTH LOOKUP HLOOKUP VLOOKUP MATCH INDEX MODE.MULT SUMX2MY2 SUMX2PY2 SUMXMY2 CORREL COVAR PEARSON SLOPE INTERCEPT RSQ STEYX FORECAST PROB IRR MIRR NPV XNPV XIRR AND OR XOR LET LAMBDA".split(
    " ",
  ),
);

/**
 * What a formula needs so that the engine, which always works with whole ranges, does what a spreadsheet does: SINGLE( ) for each `@`,
 * and in a formula that is stored for one cell also for each range that an operator or the cell itself wants one value of.
 */
export const oneCellEdits = (tree: Node, oneCell: boolean): Edit[] => {
  const edits: Edit[] = [];
  const walk = (node: Node | null, wantsOne: boolean): void => {
    const { type, operator, arguments: operands = [], callee, loc: [from, to] = [], value } = (node as Operation) ?? {};
    if (from === undefined || to === undefined) return;
    if (type === "UnaryExpression" && operator === "@") {
      edits.push({ at: from, put: "SINGLE(", drop: 1 }, { at: to, put: ")" });
      return;
    }
    if (type === "UnaryExpression" && operator === "#") return;
    if (type === "BinaryExpression" && operator === ":") return;
    if (type === "UnaryExpression" || type === "BinaryExpression") {
      for (const operand of operands) walk(operand, wantsOne);
      return;
    }
    if (type === "CallExpression") {
      const whole = wholeArrays.has(callee?.name?.toUpperCase() ?? "");
      for (const operand of operands) if (operand) walk(operand, wantsOne && !whole && isOperation(operand));
      return;
    }
    if (type === "ReferenceIdentifier" && wantsOne && isSeveral(String(value)))
      edits.push({ at: from, put: "SINGLE(" }, { at: to, put: ")" });
    if (type === "LetExpression" || type === "LambdaExpression") {
      const { declarations = [], body } = node as Node & { declarations?: { init: Node | null }[]; body: Node | null };
      for (const { init } of declarations) walk(init, false);
      walk(body, false);
    }
  };
  walk(tree, oneCell);
  return edits;
};

const isOperation = ({ type }: Node): boolean => type === "UnaryExpression" || type === "BinaryExpression";

const isSeveral = (reference: string): boolean => {
  const read = parseA1Ref(reference);
  if (!read || !("range" in read)) return false;
  const { top, bottom = top, left, right = left } = read.range;
  return top !== bottom || left !== right;
};
