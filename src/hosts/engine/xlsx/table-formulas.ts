import type { Spelling } from "../spelling";
import { typedFormula } from "../stored-formula";
import type { OpenedWorkbook } from "./open-workbook";
import { relationsOf } from "./parts";
import { readXml } from "./xml";

/** A column of a table whose new rows, or whose total, a spreadsheet fills by a formula of ours. */
export interface FilledColumn {
  readonly table: string;
  readonly column: string;
}

/** Formulas of ours that stand in the tables' own parts, not in cells. */
export const columnsFilledByOurs = ({ pack, sheetParts }: OpenedWorkbook, spelling: Spelling): FilledColumn[] =>
  sheetParts.flatMap((part) =>
    relationsOf(pack, part)
      .filter(({ type }) => type === "table")
      .flatMap(({ target }) => filledIn(pack.text(target), target, spelling)),
  );

const filledIn = (xml: string, part: string, spelling: Spelling): FilledColumn[] => {
  const found = new Map<string, FilledColumn>();
  let [table, column, formula] = ["", "", ""];
  let reading = false;
  readXml(xml, part, {
    open: ({ name, attributes }) => {
      if (name === "table") table = attributes.displayName ?? attributes.name ?? "";
      if (name === "tableColumn") column = attributes.name ?? "";
      reading = name === "calculatedColumnFormula" || name === "totalsRowFormula";
      if (reading) formula = "";
    },
    text: (text) => {
      if (reading) formula += text;
    },
    close: () => {
      if (reading && spelling.isOurs(typedFormula(formula, spelling))) found.set(column, { table, column });
      reading = false;
    },
  });
  return [...found.values()];
};
