import { type Cell, CellError, sayCell } from "./cells";
import type { Parameter } from "./parameter";

const lookAlike = (text: string): boolean => text.trim() !== "" && Number.isFinite(Number(text.replace(",", ".")));

/** Why a schema would not have a cell, in the house sentence. */
export const refusalSentence = (
  name: string,
  wants: Pick<Parameter, "schema" | "unit" | "choices" | "ifBlank">,
  cell: Cell,
  hint?: string,
): string => {
  if (cell instanceof CellError) return `${name}: the cell holds ${cell.code}; mend that cell first.`;
  if (cell === null || cell === "") return wants.ifBlank ?? `${name} is blank.`;
  if (wants.choices) {
    if (cell === 0 && wants.ifBlank) return wants.ifBlank;
    return `${name}: ${sayCell(cell)} is not known; known are ${wants.choices.map((word) => `"${word}"`).join(", ")}.`;
  }
  const unit = wants.unit && ` ${wants.unit}`;
  if (typeof cell !== "number" || !Number.isFinite(cell)) {
    const text =
      typeof cell === "string" && lookAlike(cell) ? ", which only looks like a number: type it again as one" : "";
    return `${name}: a number${unit && ` in${unit}`} is wanted, not ${sayCell(cell)}${text}.`;
  }
  const issue = wants.schema.safeParse(cell).error?.issues[0];
  const limit =
    issue?.code === "too_small"
      ? `${issue.inclusive ? "at least" : "more than"} ${issue.minimum}${unit}`
      : issue?.code === "too_big"
        ? `${issue.inclusive ? "at most" : "less than"} ${issue.maximum}${unit}`
        : (issue?.message ?? "another number");
  const zero = cell === 0 ? (wants.ifBlank ? `: ${wants.ifBlank}` : " (a blank cell counts as 0)") : "";
  return `${name}: ${limit} is wanted, not ${cell}${unit}${zero}${hint ? `; ${hint}` : ""}${/[.!?]$/.test(hint ?? zero) ? "" : "."}`;
};
