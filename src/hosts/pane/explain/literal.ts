import type { AstExpression } from "@borgar/fx";
import { type Argument, type Cell, CellError } from "../../../definition/cells";

/** The value that is typed in one place of a formula: 51, "C", -5, 80%, TRUE, #N/A, {30;36}. Undefined for anything else. */
export const literalIn = (node: AstExpression): Argument => {
  if (node.type !== "ArrayExpression") return cellIn(node);
  const rows = node.elements.map((row) => row.map((element) => cellIn(element as AstExpression)));
  return rows.some((row) => row.includes(undefined)) ? undefined : (rows as Cell[][]);
};

const cellIn = (node: AstExpression): Cell | undefined => {
  if (node.type === "Literal") return node.value;
  if (node.type === "ErrorLiteral") return new CellError(node.value);
  if (node.type !== "UnaryExpression") return undefined;
  const value = node.arguments[0] && cellIn(node.arguments[0]);
  if (typeof value !== "number") return undefined;
  if (node.operator === "-") return -value;
  if (node.operator === "+") return value;
  return node.operator === "%" ? value / 100 : undefined;
};
