import { unzipSync } from "fflate";
import { sheetParts, textOf } from "./compare-packages";
import { readSheet, type WrittenCell, without } from "./compare-sheets";
import { attribute, tagName, tokensOf } from "./xml-tokens";

/** What a copy of values may tell beside a copy with formulas. */
export interface ValuesComparison {
  /** Differences that are not to be, each in words. */
  readonly surprises: readonly string[];
  /** The cells ("Log!A1") that have their formula in the one copy and their value alone in the other. */
  readonly gone: readonly string[];
}

/**
 * Compares a copy of values with the workbook that it was made of, part by part, and its sheets with those of the copy with formulas,
 * cell by cell: they may differ in formulas that are gone, with their marks, and in nothing else.
 */
export const compareValues = (before: Uint8Array, withFormulas: Uint8Array, values: Uint8Array): ValuesComparison => {
  const [old, formulas, now] = [unzipSync(before), unzipSync(withFormulas), unzipSync(values)];
  const sheets = sheetParts(old);
  const surprises: string[] = [];
  const gone: string[] = [];
  for (const part of new Set([...Object.keys(old), ...Object.keys(now)])) {
    const sheet = [...sheets].find(([, path]) => path === part)?.[0];
    if (sheet !== undefined && part in now) {
      const compared = compareSheet(textOf(formulas[part]), textOf(now[part]));
      surprises.push(...compared.surprises.map((what) => `${part}: ${what}`));
      gone.push(...compared.gone.map((address) => `${sheet}!${address}`));
    } else if (textOf(old[part]) !== textOf(now[part]) && !isWithoutOrder(textOf(old[part]), textOf(now[part]), part))
      surprises.push(`${part} differs`);
  }
  return { surprises, gone };
};

/** Whether a part lacks the list of the order of calculation, and only that. */
const isWithoutOrder = (before: string, after: string, part: string): boolean => {
  if (after === "") return /calcChain/i.test(part);
  const isAbout = (token: string) => /calcChain/i.test(token);
  const rest = tokensOf(before).filter((token) => !isAbout(token) || !/^<(Relationship|Override)\b/.test(token));
  return rest.join("") === after;
};

const compareSheet = (formulasXml: string, valuesXml: string): { surprises: string[]; gone: string[] } => {
  const [formulas, values] = [readSheet(formulasXml), readSheet(valuesXml)];
  const surprises: string[] = [];
  const gone: string[] = [];
  if (formulas.around !== values.around) surprises.push("something outside the rows");
  if ([...formulas.rows.keys()].join() !== [...values.rows.keys()].join()) surprises.push("other rows");
  for (const [number, row] of formulas.rows) {
    const other = values.rows.get(number);
    if (!other) continue;
    if (row.open !== other.open || row.between !== other.between) surprises.push(`row ${number}`);
    if ([...row.cells.keys()].join() !== [...other.cells.keys()].join())
      surprises.push(`row ${number} has other cells`);
    for (const [address, cell] of row.cells) {
      const shown = other.cells.get(address);
      if (!shown || shown.raw === cell.raw) continue;
      if (isWithoutFormula(cell, shown)) gone.push(address);
      else surprises.push(`${address}: ${cell.raw} → ${shown.raw}`);
    }
  }
  return { surprises, gone };
};

const isWithoutFormula = (cell: WrittenCell, shown: WrittenCell): boolean => {
  const isFormula = ([tag]: readonly string[]) => tagName(tag ?? "") === "f";
  const rest = ({ children }: WrittenCell) => children.filter((child) => !isFormula(child));
  return (
    cell.children.some(isFormula) &&
    !shown.children.some(isFormula) &&
    without(cell.open, "cm") === without(shown.open, "cm") &&
    attribute(shown.open, "cm") === undefined &&
    rest(cell).flat().join("") === shown.children.flat().join("")
  );
};

/** The cells whose formulas, as they are written in a workbook, call a function of ours. */
export const callsOfOurs = (bytes: Uint8Array): string[] => {
  const parts = unzipSync(bytes);
  return [...sheetParts(parts)].flatMap(([sheet, part]) => {
    const { formulas } = readSheet(textOf(parts[part]));
    const shared = new Map(
      [...formulas.values()]
        .map((tokens) => [attribute(tokens[0] ?? "", "si"), tokens.slice(1, -1).join("")] as const)
        .filter(([si, text]) => si !== undefined && text !== ""),
    );
    return [...formulas].flatMap(([address, tokens]) => {
      const text = tokens.slice(1, -1).join("") || shared.get(attribute(tokens[0] ?? "", "si")) || "";
      return /BIMETAL[._][A-Z._]+\(/i.test(text) ? [`${sheet}!${address}`] : [];
    });
  });
};
