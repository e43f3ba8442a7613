/**
 * A cell's address as its calls are remembered by: "Log!F2", "Bench log!F2". Excel writes the same cell in several ways
 * ("'Bench log'!F2", "Log!$F$2", "[Trials.xlsx]Log!F2"), depending on who asks.
 */
export const wholeAddress = (address: string): string => {
  const { sheet, cell } = partsOf(address);
  return `${sheet}!${cell.replaceAll("$", "")}`;
};

/** The sheet's own name, without quotes or workbook, and the cells as written. The sheet is "" when none is written. */
export const partsOf = (address: string): { sheet: string; cell: string } => {
  const mark = address.lastIndexOf("!");
  return { sheet: sheetName(address.slice(0, Math.max(0, mark))), cell: address.slice(mark + 1) };
};

/** "'O''Brien'" is the sheet O'Brien. */
export const sheetName = (written: string): string =>
  written.replace(/^'(.*)'$/s, (_, inner: string) => inner.replaceAll("''", "'")).replace(/^\[[^\]]*\]/, "");
