import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import type { Cell } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import type { Book } from "../engine/book";
import { type Calculated, calculate } from "../engine/calculate";
import { Spelling } from "../engine/spelling";
import { type OpenedWorkbook, openWorkbook } from "../engine/xlsx/open-workbook";
import { patchWorkbook } from "../engine/xlsx/patch-workbook";
import { UnreadableWorkbook } from "../engine/xlsx/unreadable";
import { csv } from "./csv";
import { readWords, usage } from "./recalculate-words";
import { summaryOf } from "./summary";
import type { Outcome } from "./terminal";
import { writeSafely } from "./write-safely";

const notUnderstood = (sentence: string): Outcome => ({ out: "", err: [sentence], code: 2 });

/** The command `recalculate`. `tell` hears of what takes long. */
export const recalculateWorkbook = async (
  words: readonly string[],
  catalogue: readonly AnyDefinition[],
  tell: (sentence: string) => void = () => {},
): Promise<Outcome> => {
  const asked = readWords(words);
  if (asked === "help") return { out: usage, err: [], code: 0 };
  if ("sentence" in asked) return notUnderstood(asked.sentence);
  const opened = await openFile(asked.file, catalogue);
  if ("code" in opened) return opened;
  const { book } = opened;
  if (asked.csv !== undefined && !sheetNamed(book, asked.csv))
    return notUnderstood(
      `There is no sheet "${asked.csv}"; there are ${book.sheets.map(({ name }) => `"${name}"`).join(", ")}.`,
    );

  const formulas = book.sheets.reduce(
    (sum, { cells }) => sum + cells.filter(({ formula }) => formula !== undefined).length,
    0,
  );
  if (formulas > MANY) tell(`Calculating ${formulas} formulas …`);
  const grid = await calculate(book, catalogue);
  const spelling = new Spelling(catalogue);
  const { lines, refusals } = summaryOf(basename(asked.file), book, grid, spelling);
  const written: string[] = [];
  if (asked.out !== undefined) {
    if (formulas > MANY) tell(`Writing ${asked.out} …`);
    const { bytes, changed } = patchWorkbook(opened, grid, spelling);
    const failed = await writeSafely(asked.out, bytes).then(
      () => undefined,
      (thrown: NodeJS.ErrnoException) => thrown,
    );
    if (failed) return notUnderstood(`${asked.out} could not be written (${failed.code ?? failed.message}).`);
    written.push(`Wrote ${asked.out}: ${changed} ${changed === 1 ? "cell has" : "cells have"} a new value.`);
  }
  const summary = [...lines, ...written];
  const code = grid.defects.length > 0 ? 3 : refusals + grid.kept.length > 0 ? 1 : 0;
  if (asked.csv === undefined) return { out: summary.map((line) => `${line}\n`).join(""), err: [], code };
  return { out: csv(sheetRows(book, asked.csv, grid)), err: summary, code };
};

/** From so many formulas on a person waits long enough to be told. */
const MANY = 5_000;

/** Larger files are no workbooks of people. */
const MOST_BYTES = 200e6;

const openFile = async (file: string, catalogue: readonly AnyDefinition[]): Promise<OpenedWorkbook | Outcome> => {
  try {
    const { size } = await stat(file);
    if (size > MOST_BYTES)
      return notUnderstood(`${file} is ${size} bytes long, more than this program takes (${MOST_BYTES}).`);
    return openWorkbook(await readFile(file), catalogue);
  } catch (thrown) {
    if (thrown instanceof UnreadableWorkbook) return notUnderstood(`${file}: ${thrown.message}`);
    const { code } = thrown as NodeJS.ErrnoException;
    if (code === "ENOENT") return notUnderstood(`There is no file ${file}.`);
    if (code) return notUnderstood(`${file} could not be read (${code}).`);
    throw thrown;
  }
};

const sheetNamed = (book: Book, name: string) =>
  book.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());

const sheetRows = (book: Book, name: string, grid: Calculated): Cell[][] => {
  const sheet = sheetNamed(book, name);
  if (!sheet) return [];
  const blocks = grid.spillsOn(sheet.name);
  const ends = [...sheet.cells.map((cell) => ({ ...cell, rows: 1, columns: 1 })), ...blocks];
  const rows = ends.reduce((most, block) => Math.max(most, block.row + block.rows), 0);
  const columns = ends.reduce((most, block) => Math.max(most, block.column + block.columns), 0);
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => grid.valueAt({ sheet: sheet.name, row, column })),
  );
};
