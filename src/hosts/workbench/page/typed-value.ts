import { CellValueType, type ICellData } from "@univerjs/core";
import { type Cell, CellError } from "../../../definition/cells";

/** Days from the last one of 1899, as spreadsheets count them. */
const dayZero = Date.UTC(1899, 11, 30);
const dayMs = 86_400_000;

/**
 * What is typed or pasted as a cell: a number, a day as 2026-06-09, a percentage, TRUE or FALSE; all else is text. A comma is
 * never guessed at: "0,157" is 0.157 to one program and 157 to another, so it stays text, and what asks for a number says so.
 * `format`: the number format that the cell has; it stays.
 */
export const cellTyped = (typed: string, format: string): ICellData => {
  const plain = typed.replaceAll("\u00a0", " ").trim();
  const number = (v: number, pattern?: string): ICellData => ({
    v,
    t: CellValueType.NUMBER,
    f: null,
    p: null,
    ...(pattern && /^(General)?$/i.test(format) && { s: { n: { pattern } } }),
  });
  if (plain === "") return { v: null, f: null, p: null };
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain)) return number(Number(plain));
  if (/^[+-]?\d+(\.\d+)?\s?%$/.test(plain)) return number(Number.parseFloat(plain) / 100, "0%");
  const day = /^(19|20)\d\d-\d\d-\d\d$/.test(plain) ? Date.parse(plain) : Number.NaN;
  if (Number.isFinite(day)) return number((day - dayZero) / dayMs, "yyyy-mm-dd");
  if (/^(true|false)$/i.test(plain))
    return { v: /^t/i.test(plain) ? 1 : 0, t: CellValueType.BOOLEAN, f: null, p: null };
  return asText(typed);
};

/** What stands as it was typed, and is neither a number nor a formula. */
export const asText = (typed: string): ICellData => ({ v: typed, t: CellValueType.STRING, f: null, p: null });

/** A value as it would be typed into a cell of that number format. */
export const sayTyped = (value: Cell, format: string): string => {
  if (value === null) return "";
  if (value instanceof CellError) return value.code;
  if (typeof value === "boolean") return String(value).toUpperCase();
  return typeof value === "number" && isWholeDay(value, format)
    ? new Date(dayZero + value * dayMs).toISOString().slice(0, 10)
    : String(value);
};

/** Before March 1900 spreadsheets count a day that never was. */
const isWholeDay = (value: number, format: string): boolean =>
  Number.isInteger(value) && value > 60 && value < 2_958_466 && /y/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, ""));
