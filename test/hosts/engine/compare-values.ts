import { unzipSync } from "fflate";
import { cellOf, sheetOf, sheetParts, textOf } from "./compare-packages";
import { readSheet, type WrittenCell, without } from "./compare-sheets";
import { attribute, isCut, tagName, tokensOf } from "./xml-tokens";

/** What a copy of values may tell beside a copy with formulas. */
interface ValuesComparison {
  /** Differences that are not to be, each in words. */
  readonly surprises: readonly string[];
  /** The cells ("Log!A1") that have their formula in the one copy and their value alone in the other. */
  readonly gone: readonly string[];
}

/**
 * Compares a copy of values with the workbook that it was made of, part by part, and its sheets with those of the copy with formulas,
 * cell by cell: they may differ in formulas that are gone, with their marks, and in nothing else. A formula of a cell in `kept`, which was
 * not calculated, may be written out where it was written in another cell before.
 */
export const compareValues = (
  before: Uint8Array,
  withFormulas: Uint8Array,
  values: Uint8Array,
  kept: readonly string[] = [],
): ValuesComparison => {
  const [old, formulas, now] = [unzipSync(before), unzipSync(withFormulas), unzipSync(values)];
  const sheets = sheetParts(old);
  const surprises: string[] = [];
  const gone: string[] = [];
  for (const part of new Set([...Object.keys(old), ...Object.keys(now)])) {
    const sheet = [...sheets].find(([, path]) => path === part)?.[0];
    if (textOf(formulas[part]) === textOf(now[part]) && textOf(old[part]) === textOf(now[part])) continue;
    if (sheet !== undefined && part in now) {
      const isKept = (address: string) => kept.some((place) => cellOf(place) === address && sheetOf(place) === sheet);
      const compared = compareSheet(textOf(formulas[part]), textOf(now[part]), isKept);
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

const compareSheet = (
  formulasXml: string,
  valuesXml: string,
  isKept: (address: string) => boolean,
): { surprises: string[]; gone: string[] } => {
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
      if (isKept(address) && isWrittenOut(cell, shown)) continue;
      if (!isKept(address) && isWithoutFormula(cell, shown)) gone.push(address);
      else surprises.push(`${address}: ${cell.raw} → ${shown.raw}`);
    }
  }
  return { surprises, gone };
};

const isFormula = ([tag]: readonly string[]): boolean => tagName(tag ?? "") === "f";
const restOf = ({ children }: WrittenCell): string =>
  children
    .filter((child) => !isFormula(child))
    .flat()
    .join("");

const isWithoutFormula = (cell: WrittenCell, shown: WrittenCell): boolean =>
  cell.children.some(isFormula) &&
  !shown.children.some(isFormula) &&
  without(cell.open, "cm") === without(shown.open, "cm") &&
  attribute(shown.open, "cm") === undefined &&
  restOf(cell) === restOf(shown);

const isWrittenOut = (cell: WrittenCell, shown: WrittenCell): boolean => {
  const [old, now] = [cell, shown].map(({ children }) => children.find(isFormula) ?? []) as [string[], string[]];
  return (
    cell.open === shown.open &&
    restOf(cell) === restOf(shown) &&
    attribute(old[0] ?? "", "t") === "shared" &&
    old.slice(1, -1).join("") === "" &&
    without(old[0] ?? "", "t", "si", "ref") === without(now[0] ?? "", "t", "si", "ref") &&
    attribute(now[0] ?? "", "t") === undefined &&
    now.slice(1, -1).join("") !== ""
  );
};

/** The cells whose formulas, as they are written in a workbook, call a function of ours; or those of them that are stored for one cell. */
export const callsOfOurs = (bytes: Uint8Array, which: "all" | "single" = "all"): string[] => {
  const parts = unzipSync(bytes);
  return [...sheetParts(parts)].flatMap(([sheet, part]) => {
    const xml = textOf(parts[part]);
    // A part that cannot be cut holds no cells for anybody: a sheet of another kind, whose bytes were hit.
    if (!isCut(xml)) return [];
    const { formulas } = readSheet(xml);
    const shared = new Map(
      [...formulas.values()]
        .map((tokens) => [attribute(tokens[0] ?? "", "si"), tokens.slice(1, -1).join("")] as const)
        .filter(([si, text]) => si !== undefined && text !== ""),
    );
    return [...formulas].flatMap(([address, tokens]) => {
      const text = tokens.slice(1, -1).join("") || shared.get(attribute(tokens[0] ?? "", "si")) || "";
      const isMeant = which === "all" || attribute(tokens[0] ?? "", "t") !== "array";
      return isMeant && /BIMETAL[._][A-Z._]+\(/i.test(text) ? [`${sheet}!${address}`] : [];
    });
  });
};
