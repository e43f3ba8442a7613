import { type Cell, CellError, sayCell } from "./cells";
import type { Parameter } from "./parameter";

/** What to type in place of a text where a number is wanted. */
const adviceOn = (text: string, unit: string): string => {
  const trimmed = text.trim();
  if (trimmed !== "" && Number.isFinite(Number(trimmed.replace(",", "."))))
    return ", which only looks like a number: type it again as one";
  const [, first = "", second = "", third] = /^(\d{1,4}):(\d{2})(?::(\d{2}))?$/.exec(trimmed) ?? [];
  if (unit === "s" && second !== "") {
    const [high, low] = [Number(first), Number(second)];
    return third === undefined
      ? `; in seconds that is ${high * 60 + low} if it means minutes:seconds, ${high * 3600 + low * 60} if hours:minutes`
      : `; in seconds that is ${high * 3600 + low * 60 + Number(third)}`;
  }
  if (/^[-+]?\d+([.,]\d+)?\s*[a-zµμΩ°%]{1,4}$/i.test(trimmed))
    return unit ? `: type the number alone, in ${unit}` : ": type the number alone";
  return "";
};

/** An error handed over; where a word is wanted, one typed without its quotes comes in as #NAME?. */
export const errorSentence = (name: string, { code }: CellError, word?: string): string =>
  code === "#NAME?" && word !== undefined
    ? `${name}: #NAME? came in; a word typed into a formula stands in quotes: "${word}".`
    : `${name}: the cell holds ${code}; mend that cell first.`;

/** Why a schema would not have a cell, in the house sentence. */
export const refusalSentence = (
  name: string,
  wants: Pick<Parameter, "schema" | "unit" | "choices" | "ifBlank">,
  cell: Cell,
  hint?: string,
): string => {
  if (cell instanceof CellError) return errorSentence(name, cell, wants.choices?.[0]);
  if (cell === null || cell === "") return wants.ifBlank ?? `${name} is blank.`;
  if (wants.choices) {
    if (cell === 0 && wants.ifBlank) return wants.ifBlank;
    return `${name}: ${sayCell(cell)} is not known; known are ${wants.choices.map((word) => `"${word}"`).join(", ")}.`;
  }
  const unit = wants.unit && ` ${wants.unit}`;
  if (typeof cell !== "number" || !Number.isFinite(cell)) {
    const advice = typeof cell === "string" ? adviceOn(cell, wants.unit) : "";
    return `${name}: a number${unit && ` in${unit}`} is wanted, not ${sayCell(cell)}${advice}.`;
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
