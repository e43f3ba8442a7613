import { parseA1Ref, stringifyA1Ref } from "@borgar/fx";

/** The sheet of "Log!F2" or "'Bench log'!F2", as it is written there; "" when none is. */
export const sheetOf = (address: string): string => address.slice(0, Math.max(0, address.lastIndexOf("!")));

/** The cell of "Log!F2": "F2". */
export const cellOf = (address: string): string => address.slice(address.lastIndexOf("!") + 1);

/** "'Bench log'!F2" in words: "F2, sheet Bench log". */
export const sayAddress = (address: string): string => {
  const sheet = sheetOf(address).replace(/^'|'$/g, "").replaceAll("''", "'");
  return sheet === "" ? address : `${cellOf(address)}, sheet ${sheet}`;
};

/** The cell above "Log!F2": "Log!F1". Undefined in the first row. */
export const cellAbove = (address: string): string | undefined => {
  const parsed = parseA1Ref(address);
  if (!parsed || !("range" in parsed) || !parsed.range.top) return undefined;
  const top = parsed.range.top - 1;
  return stringifyA1Ref({ ...parsed, range: { ...parsed.range, top, bottom: top } });
};

/** The cell of a reference's nth row (or column, where it lies across): "B5" of "B2:B20", 3. The reference itself when it has none. */
export const nthCell = (reference: string, n: number): string => {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed)) return reference;
  const { range } = parsed;
  if (range.top === null || range.left === null) return reference;
  const { top, left, bottom = top, right = left } = range;
  const isAcross = bottom === top;
  const size = isAcross ? (right ?? left) - left : (bottom ?? top) - top;
  if (n > size) return reference;
  const cell = isAcross ? { top, left: left + n } : { top: top + n, left };
  return stringifyA1Ref({ ...parsed, range: { ...cell, bottom: cell.top, right: cell.left } });
};
