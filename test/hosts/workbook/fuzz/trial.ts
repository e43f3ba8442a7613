import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { catalogue } from "../../../../src/functions";
import { openWorkbook } from "../../../../src/hosts/engine/xlsx/open-workbook";
import { UnreadableWorkbook } from "../../../../src/hosts/engine/xlsx/unreadable";
import { recalculateWorkbook } from "../../../../src/hosts/workbook/recalculate-workbook";
import { surprises } from "../../engine/compare-packages";
import { Chance } from "./chance";
import { damagedBytes, damagedParts } from "./damage-package";

/** What came of one damaged workbook. */
export interface Trial {
  readonly code: number;
  /** What must not happen, in words. */
  readonly faults: readonly string[];
}

/** The file that a seed makes of one of the workbooks. */
export const damaged = (workbooks: readonly Uint8Array[], seed: number): Uint8Array => {
  const chance = new Chance(seed);
  const workbook = chance.pick(workbooks);
  return chance.oneIn(5) ? damagedBytes(workbook, chance) : damagedParts(workbook, chance);
};

/** Recalculates a file that may hold anything, and looks at all that is promised of it. */
export const tried = async (bytes: Uint8Array, folder: string): Promise<Trial> => {
  const [input, output, again] = ["in.xlsx", "out.xlsx", "again.xlsx"].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  for (const path of [output, again]) rmSync(path, { force: true });
  writeFileSync(input, bytes);
  const { mtimeMs } = statSync(input);
  const faults: string[] = [];
  const sheet = firstSheet(bytes);
  const words = sheet === undefined ? [] : ["--csv", sheet];
  const outcome = await recalculateWorkbook([input, "--out", output, ...words], catalogue).catch((thrown: unknown) => ({
    ...{ out: "", err: [], code: 3 },
    thrown: thrown instanceof Error ? thrown.stack : String(thrown),
  }));
  const { out, err, code } = outcome;
  if (code > 2) faults.push(`a defect: ${"thrown" in outcome ? outcome.thrown : err.join(" | ")}`);
  if (!readFileSync(input).equals(bytes) || statSync(input).mtimeMs !== mtimeMs) faults.push("the input was touched");
  if (code === 2) faults.push(...notOneSentence(err), ...(existsSync(output) ? ["it wrote a copy all the same"] : []));
  for (const line of [...err, ...(words.length > 0 ? [] : out.split("\n"))])
    if (obeyed.test(line)) faults.push(`a line that a terminal obeys: ${line}`);
  if (code <= 1) {
    if (words.length > 0) faults.push(...dangerousCells(out));
    faults.push(...(await faultsOfCopy(bytes, output, again)));
  }
  return { code, faults };
};

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
const obeyed = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/;

const notOneSentence = (err: readonly string[]): string[] =>
  err.length === 1 && /^\S.*[.)…]$/.test(err[0] ?? "") && (err[0] ?? "").length < 1100
    ? []
    : [`no single sentence: ${JSON.stringify(err)}`];

const firstSheet = (bytes: Uint8Array): string | undefined => {
  try {
    return openWorkbook(bytes, catalogue).book.sheets[0]?.name;
  } catch (thrown) {
    if (thrown instanceof UnreadableWorkbook) return undefined;
    return "";
  }
};

/** CSV by the rules of RFC 4180. */
const cellsOf = (text: string): string[] => {
  const cells: string[] = [];
  let [cell, isQuoted] = ["", false];
  for (let at = 0; at < text.length; at++) {
    const character = text[at] as string;
    if (character === '"' && isQuoted && text[at + 1] === '"') cell += text[++at];
    else if (character === '"') isQuoted = !isQuoted;
    else if (!isQuoted && (character === "," || character === "\n")) {
      cells.push(cell);
      cell = "";
    } else cell += character;
  }
  return cells;
};

/** The cells that a spreadsheet would run; a number is none, whatever its sign. */
const dangerousCells = (text: string): string[] =>
  cellsOf(text)
    .filter((cell) => /^\s*[=+\-@]|^[\t\r\n]/.test(cell) && !/^-?\d+(\.\d+)?(e[+-]\d+)?$/.test(cell))
    .map((cell) => `a cell that a spreadsheet runs: ${cell}`);

/** A damaged part that nothing of a recalculation needs is carried over as it is, and cannot be compared. */
const isSound = (bytes: Uint8Array): boolean => {
  try {
    unzipSync(bytes);
    return true;
  } catch {
    return false;
  }
};

/** What is wrong with the copy: it must be read, differ in values of calculated cells only, and stay as it is when recalculated. */
const faultsOfCopy = async (before: Uint8Array, output: string, again: string): Promise<string[]> => {
  if (!existsSync(output)) return ["it wrote no copy"];
  const after = new Uint8Array(readFileSync(output));
  const second = await recalculateWorkbook([output, "--out", again], catalogue);
  if (second.code > 1) return [`the copy is not read: ${second.err.join(" ")}`];
  const kept = [...second.out.matchAll(/^ {2}((?:'(?:[^']|'')*'|[^ !']+)![A-Z]+\d+): (?!#)/gm)].map(
    ([, place = ""]) => place,
  );
  const isComplete = !/^ {2}… and/m.test(second.out);
  const changed = readFileSync(again).equals(after)
    ? []
    : [`a second recalculation changes the copy: ${/Wrote.*/.exec(second.out)?.[0]}`];
  return [...changed, ...(isComplete && isSound(before) ? surprises(before, after, kept) : [])];
};
