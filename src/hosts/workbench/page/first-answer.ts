import type { Book, SheetCell } from "../../engine/book";
import { NAMESPACE } from "../../engine/functions";
import type { Place } from "../../engine/place";

/** The first cell of a workbook's first sheet, by rows, whose formula holds one of our functions; a verdict before others. */
export const firstAnswer = ({ sheets: [sheet] }: Book): Place | undefined => {
  const ours = sheet?.cells.filter(({ formula }) => formula?.toUpperCase().includes(`${NAMESPACE}.`)) ?? [];
  const rank = ({ formula }: SheetCell) => (/VERDICT/i.test(formula ?? "") ? 0 : 1);
  const [first] = ours.sort((a, b) => rank(a) - rank(b) || a.row - b.row || a.column - b.column);
  return sheet && first && { sheet: sheet.name, row: first.row, column: first.column };
};
