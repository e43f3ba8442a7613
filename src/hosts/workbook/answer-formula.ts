import { type Cell, CellError } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import { calculate } from "../engine/calculate";
import { csv } from "./csv";
import type { Outcome } from "./watch";

const sheet = "Scratch";

const usage = `Answers one formula, as a cell of a spreadsheet would.

  npm run --silent cell -- '=BIMETAL.CONTACT.WATTS({20;30},0.16)'

The answer comes as CSV, a line per row, numbers unrounded. Array constants such as {30;36} and ordinary
functions work; there are no other cells to refer to. Where a row is refused it shows #VALUE! or #N/A and the
reason stands on the standard error.

Exit code: 0 answered, 1 answered with refusals or errors, 2 not understood.
`;

/** The command `cell`: one formula in, its spilled answer out. */
export const answerFormula = async (
  words: readonly string[],
  catalogue: readonly AnyDefinition[],
): Promise<Outcome> => {
  if (words.some((word) => word === "--help" || word === "-h")) return { out: usage, err: [], code: 0 };
  const [formula = "", ...more] = words;
  if (formula.trim() === "" || more.length > 0)
    return {
      out: "",
      err: ["Give one formula in quotes: npm run --silent cell -- '=1+1' (--help says more)."],
      code: 2,
    };
  return answered(formula.trim().replace(/^=?/, "="), catalogue);
};

const answered = async (formula: string, catalogue: readonly AnyDefinition[]): Promise<Outcome> => {
  const first = { sheet, row: 0, column: 0 };
  const cells = [{ row: 0, column: 0, value: null, formula }];
  const grid = await calculate({ sheets: [{ name: sheet, cells }] }, catalogue);
  const [kept] = grid.kept;
  if (kept) return { out: "", err: [`The formula cannot be answered. ${kept.why}`], code: 2 };
  const { rows, columns } = grid.spillAt(first) ?? { rows: 1, columns: 1 };
  const at = (row: number, column: number) => ({ sheet, row, column });
  const values = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column): Cell => grid.valueAt(at(row, column))),
  );
  const reasons = values.flatMap((row, r) => {
    const own = row.flatMap((value, c) =>
      value instanceof CellError ? [grid.messageAt(at(r, c)) ?? `The answer is ${value.code}.`] : [],
    );
    return [...new Set(own)].map((reason) => (rows > 1 ? `row ${r + 1}: ${reason}` : reason));
  });
  grid.close();
  return { out: csv(values), err: reasons, code: grid.defects.length > 0 ? 3 : reasons.length > 0 ? 1 : 0 };
};
