import { extname } from "node:path";
import { parseArgs } from "node:util";

export const usage = `Recalculates the formulas of an .xlsx or .xlsm workbook and says what came of it.

  npm run --silent recalculate -- log.xlsx                  the summary: formulas, refusals, what was not calculated
  npm run --silent recalculate -- log.xlsx --out new.xlsx   also writes a copy with the new values, all else unchanged
  npm run --silent recalculate -- log.xlsx --values shown.xlsx
                                                            writes a copy for people without the add-in: where a formula has functions
                                                            of BIMETAL its value stands alone; other formulas stay
  npm run --silent recalculate -- log.xlsx --csv Log        prints the sheet Log as CSV, numbers unrounded and dates as their numbers;
                                                            the summary goes to the standard error
  npm run --silent recalculate -- log.xlsx --minutes 60     gives up after an hour instead of 20 minutes

A very large workbook may want more memory than Node.js takes by itself: NODE_OPTIONS=--max-old-space-size=8000 lets it have 8 GB.
The workbook itself is never touched unless it is also named after --out.

Exit code: 0 all calculated, 1 some cells refused or not calculated, 2 the command or the workbook not understood,
or given up for want of time or memory.
`;

/** A week: longer than that a timer cannot wait much. */
const MOST_MINUTES = 10_080;

/** What the command was asked to do. */
export interface Asked {
  readonly file: string;
  readonly out?: string;
  readonly values?: string;
  readonly csv?: string;
  readonly minutes?: number;
}

/** The words of the command line; a sentence when they say nothing that can be done. */
export const readWords = (words: readonly string[]): Asked | "help" | { readonly sentence: string } => {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        out: { type: "string" },
        values: { type: "string" },
        csv: { type: "string" },
        minutes: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
    if (values.help) return "help";
    const [file, ...more] = positionals;
    if (!file) return { sentence: "Name a workbook: npm run --silent recalculate -- log.xlsx (--help says more)." };
    if (more.length > 0) return { sentence: `One workbook at a time, please: what is "${more[0]}"?` };
    const misnamed = [values.out, values.values].find(
      (copy) => copy !== undefined && extname(copy).toLowerCase() !== extname(file).toLowerCase(),
    );
    if (misnamed !== undefined)
      return { sentence: `The copy must end in ${extname(file) || "nothing"} as the workbook does, not ${misnamed}.` };
    const minutes = values.minutes === undefined ? undefined : Number(values.minutes);
    if (minutes !== undefined && !(minutes > 0 && minutes <= MOST_MINUTES))
      return {
        sentence: `--minutes: a number above 0 and at most ${MOST_MINUTES} is wanted, not "${values.minutes}".`,
      };
    return {
      file,
      ...(values.out !== undefined && { out: values.out }),
      ...(values.values !== undefined && { values: values.values }),
      ...(values.csv !== undefined && { csv: values.csv }),
      ...(minutes !== undefined && { minutes }),
    };
  } catch (thrown) {
    return { sentence: `${(thrown as Error).message.split(". ")[0]}. (--help says what there is.)` };
  }
};
