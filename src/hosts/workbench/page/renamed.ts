import { parseA1Ref, stringifyA1Ref, tokenize } from "@borgar/fx";
import type { Book, Sheet } from "../../engine/book";

/** A workbook in which one sheet has another name, in its formulas and names too. */
export const renamed = (book: Book, from: string, to: string): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...renamedInCells(sheet, from, to),
    name: sheet.name === from ? to : sheet.name,
  })),
  names: book.names?.map((name) => ({
    ...name,
    formula: renamedInFormula(name.formula, from, to),
    ...(name.sheet === from && { sheet: to }),
  })),
});

const renamedInCells = (sheet: Sheet, from: string, to: string): Sheet => ({
  ...sheet,
  cells: sheet.cells.map((cell) =>
    cell.formula?.includes("!") ? { ...cell, formula: renamedInFormula(cell.formula, from, to) } : cell,
  ),
});

/** Only references are changed: the same word in a text stays. Another workbook's sheet of that name is another sheet. */
export const renamedInFormula = (formula: string, from: string, to: string): string =>
  tokenize(formula)
    .map(({ type, value }) => (/^range/.test(type) ? renamedInReference(value, from, to) : value))
    .join("");

const renamedInReference = (reference: string, from: string, to: string): string => {
  const parsed = parseA1Ref(reference);
  const { context = [] } = parsed ?? {};
  const isMeant = context.length === 1 && context[0]?.toLowerCase() === from.toLowerCase();
  return parsed && isMeant ? stringifyA1Ref({ ...parsed, context: [to] }) : reference;
};
