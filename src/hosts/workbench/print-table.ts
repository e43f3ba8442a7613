import { sayPlace } from "../engine/place";
import { plainLine } from "../engine/plain-line";
import type { Kept } from "../engine/readable";
import type { LogTable } from "./log-table";

const widest = 34;
/** What a person scrolls through; the command `recalculate` prints whole sheets. */
const mostRows = 300;
const mostRefusals = 60;

/** A table in lines of plain text, its refusals below it. */
export const printTable = ({ headings, rows, isNumeric, refusals }: LogTable): string => {
  const all = [headings, ...rows.slice(0, mostRows)].map((row) => row.map(shortened));
  const widths = headings.map((_, column) =>
    all.reduce((widest, row) => Math.max(widest, lengthOf(row[column] ?? "")), 0),
  );
  const line = (row: readonly string[]) =>
    row
      .map((text, column) => {
        const gap = " ".repeat((widths[column] ?? 0) - lengthOf(text));
        return isNumeric[column] ? gap + text : text + gap;
      })
      .join("  ")
      .trimEnd();
  const [head = [], ...body] = all;
  const rule = widths.map((width) => "─".repeat(width)).join("  ");
  const lines = [line(head), rule, ...body.map(line), ...beyond(rows.length - mostRows, "rows")];
  if (refusals.length === 0) return lines.join("\n");
  return [
    ...lines,
    "",
    ...refusals.slice(0, mostRefusals).map(plainLine),
    ...beyond(refusals.length - mostRefusals, "refusals"),
  ].join("\n");
};

/** The formulas that were not calculated, a line each. */
export const printKept = (kept: readonly Kept[]): string[] => [
  ...kept
    .slice(0, mostRefusals)
    .map(({ place, formula, why }) => plainLine(`${sayPlace(place)} keeps the value it had: ${why} ${formula}`)),
  ...beyond(kept.length - mostRefusals, "formulas keep the values they had"),
];

const beyond = (count: number, what: string): string[] => (count > 0 ? [`… and ${count} more ${what}`] : []);

const shortened = (text: string): string => {
  const plain = plainLine(text.replace(/\s+/g, " "));
  return lengthOf(plain) > widest ? `${[...plain].slice(0, widest - 1).join("")}…` : plain;
};

const lengthOf = (text: string): number => [...text].length;
