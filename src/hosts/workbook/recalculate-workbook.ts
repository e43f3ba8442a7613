import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import type { AnyDefinition } from "../../definition/define";
import { calculate } from "../engine/calculate";
import { plainLine } from "../engine/plain-line";
import { Spelling } from "../engine/spelling";
import { type OpenedWorkbook, openWorkbook } from "../engine/xlsx/open-workbook";
import { UnreadableWorkbook } from "../engine/xlsx/unreadable";
import { csv } from "./csv";
import { type Listener, noListener } from "./listener";
import { readWords, usage } from "./recalculate-words";
import { filledExtent, sheetRows, tooLargeToPrint } from "./sheet-rows";
import { summaryOf } from "./summary";
import type { Outcome } from "./watch";
import { clashOf, copiesOf, writeCopies } from "./write-copies";

const notUnderstood = (sentence: string): Outcome => ({ out: "", err: [plainLine(sentence)], code: 2 });

/** The command `recalculate`. */
export const recalculateWorkbook = async (
  words: readonly string[],
  catalogue: readonly AnyDefinition[],
  listener: Listener = noListener,
): Promise<Outcome> => {
  const asked = readWords(words);
  if (asked === "help") return { out: usage, err: [], code: 0 };
  if ("sentence" in asked) return notUnderstood(asked.sentence);
  const clash = await clashOf(asked);
  if (clash !== undefined) return notUnderstood(clash);
  if (asked.minutes !== undefined) listener.patience(asked.minutes);
  listener.progress({ doing: `Reading ${asked.file}` });
  const opened = await openFile(asked.file, catalogue);
  if ("code" in opened) return opened;
  const { book } = opened;
  const printed = asked.csv === undefined ? undefined : sheetNamed(opened, asked.csv);
  if (asked.csv !== undefined && !printed)
    return notUnderstood(
      `There is no sheet "${asked.csv}"; there are ${book.sheets.map(({ name }) => `"${name}"`).join(", ")}.`,
    );
  const tooLarge = printed && tooLargeToPrint(printed, filledExtent(printed));
  if (tooLarge) return notUnderstood(tooLarge);

  const grid = await calculate(book, catalogue, {
    ...(asked.minutes !== undefined && { patienceMinutes: asked.minutes }),
    onProgress: (done, of) => listener.progress({ doing: "Calculating formulas", done, of }),
  });
  listener.progress({ doing: "Gathering the answers" });
  const spelling = new Spelling(catalogue);
  const { lines, refusals } = summaryOf(basename(asked.file), book, grid, spelling);
  const extent = printed && filledExtent(printed, grid);
  const grown = printed && extent && tooLargeToPrint(printed, extent);
  if (grown) return notUnderstood(grown);
  const paths = [asked.values, asked.out].filter((path) => path !== undefined);
  if (paths.length > 0) listener.progress({ doing: `Writing ${paths.join(" and ")}` });
  const copies = readable(asked.file, () => copiesOf(asked, opened, grid, spelling));
  if ("code" in copies) return copies;
  const unwritten = await writeCopies(copies);
  if (unwritten !== undefined) return notUnderstood(unwritten);
  const summary = [...lines, ...copies.flatMap((copy) => copy.lines)].map(plainLine);
  const code = grid.defects.length > 0 ? 3 : refusals + grid.kept.length > 0 ? 1 : 0;
  const rows = printed && extent ? csv(sheetRows(printed, extent, grid)) : undefined;
  grid.close();
  if (rows === undefined) return { out: summary.map((line) => `${line}\n`).join(""), err: [], code };
  return { out: rows, err: summary, code };
};

/** What is made of a file; a sentence when some part of it cannot be read after all. */
const readable = <T>(file: string, make: () => T): T | Outcome => {
  try {
    return make();
  } catch (thrown) {
    if (thrown instanceof UnreadableWorkbook) return notUnderstood(`${file}: ${thrown.message}`);
    throw thrown;
  }
};

/** Larger files are no workbooks of people. */
const MOST_BYTES = 200e6;

const openFile = async (file: string, catalogue: readonly AnyDefinition[]): Promise<OpenedWorkbook | Outcome> => {
  try {
    const found = await stat(file);
    if (!found.isFile()) return notUnderstood(`${file} is no file.`);
    if (found.size > MOST_BYTES)
      return notUnderstood(`${file} is ${found.size} bytes long, more than this program takes (${MOST_BYTES}).`);
    const bytes = await readFile(file);
    return readable(file, () => openWorkbook(bytes, catalogue));
  } catch (thrown) {
    const { code } = thrown as NodeJS.ErrnoException;
    if (code === "ENOENT") return notUnderstood(`There is no file ${file}.`);
    if (code) return notUnderstood(`${file} could not be read (${code}).`);
    throw thrown;
  }
};

const sheetNamed = ({ book }: OpenedWorkbook, name: string) =>
  book.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
