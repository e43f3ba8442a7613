import { tokenize } from "@borgar/fx";
import { parsed } from "./formula-tree";
import { numberLiteral } from "./literal-edits";

/**
 * A formula that a person typed, as it goes into the grid: brackets that were left open are closed, numbers are written as the engine
 * knows them again, functions, cells, TRUE and FALSE in capitals. undefined: no sheet would read it, and a workbook that holds it is
 * taken for a damaged one.
 */
export const gridFormula = (typed: string): string | undefined => {
  const tokens = tokenize(typed);
  const brackets = tokens.map(({ value }) => (value === "(" ? 1 : value === ")" ? -1 : 0));
  const open = brackets.reduce<number>((depth, change) => depth + change, 0);
  const words = tokens
    .map(({ type, value }) => {
      if (type === "number") return numberLiteral(value);
      if (type === "func" || type === "bool") return value.toUpperCase();
      if (!/^range(_beam|_ternary)?$/.test(type)) return value;
      const cells = value.lastIndexOf("!") + 1;
      return value.slice(0, cells) + value.slice(cells).toUpperCase();
    })
    .join("");
  const formula = words + ")".repeat(Math.max(open, 0));
  return parsed(tokenize(formula)) ? formula : undefined;
};
