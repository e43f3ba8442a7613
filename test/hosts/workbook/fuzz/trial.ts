import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { catalogue } from "../../../../src/functions";
import { openWorkbook } from "../../../../src/hosts/engine/xlsx/open-workbook";
import { UnreadableWorkbook } from "../../../../src/hosts/engine/xlsx/unreadable";
import { recalculateWorkbook } from "../../../../src/hosts/workbook/recalculate-workbook";
import { cellOf, sheetOf, surprises } from "../../engine/compare-packages";
import { callsOfOurs, compareValues } from "../../engine/compare-values";
import { Chance } from "./chance";
import { damagedBytes, damagedParts } from "./damage-package";

/** What came of one damaged workbook. */
interface Trial {
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
  const at = (name: string) => join(folder, name);
  const [input, output, values, again] = [at("in.xlsx"), at("out.xlsx"), at("values.xlsx"), at("again.xlsx")] as const;
  for (const path of [output, values, again]) rmSync(path, { force: true });
  writeFileSync(input, bytes);
  const { mtimeMs } = statSync(input);
  const faults: string[] = [];
  const sheet = firstSheet(bytes);
  const words = sheet === undefined ? [] : ["--csv", sheet];
  const outcome = await recalculateWorkbook([input, "--out", output, "--values", values, ...words], catalogue).catch(
    (thrown: unknown) => ({
      ...{ out: "", err: [], code: 3 },
      thrown: thrown instanceof Error ? thrown.stack : String(thrown),
    }),
  );
  const { out, err, code } = outcome;
  if (code > 2) faults.push(`a defect: ${"thrown" in outcome ? outcome.thrown : err.join(" | ")}`);
  if (!readFileSync(input).equals(bytes) || statSync(input).mtimeMs !== mtimeMs) faults.push("the input was touched");
  if (code === 2)
    faults.push(
      ...notOneSentence(err),
      ...(existsSync(output) || existsSync(values) ? ["it wrote a copy all the same"] : []),
    );
  for (const line of [...err, ...(words.length > 0 ? [] : out.split("\n"))])
    if (obeyed.test(line)) faults.push(`a line that a terminal obeys: ${line}`);
  if (code <= 1) {
    if (words.length > 0) faults.push(...dangerousCells(out));
    faults.push(...(await faultsOfCopies(bytes, { output, values, again })));
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

interface Copies {
  readonly output: string;
  readonly values: string;
  readonly again: string;
}

/**
 * What is wrong with the copies: they must be read, differ in values of calculated cells only, and stay as they are when recalculated; the
 * one of values keeps no formula of ours but those that were not calculated.
 */
const faultsOfCopies = async (before: Uint8Array, { output, values, again }: Copies): Promise<string[]> => {
  if (!existsSync(output) || !existsSync(values)) return ["it wrote no copy"];
  const [formulas, shown] = [output, values].map((path) => new Uint8Array(readFileSync(path))) as [
    Uint8Array,
    Uint8Array,
  ];
  const third = await recalculateWorkbook([values, "--values", again], catalogue);
  if (third.code > 1) return [`the copy of values is not read: ${third.err.join(" ")}`];
  const sameValues = readFileSync(again).equals(shown);
  const second = await recalculateWorkbook([output, "--out", again], catalogue);
  if (second.code > 1) return [`the copy is not read: ${second.err.join(" ")}`];
  const kept = [...second.out.matchAll(/^ {2}((?:'(?:[^']|'')*'|[^ !']+)![A-Z]+\d+): (?!#)/gm)].map(
    ([, place = ""]) => place,
  );
  const changed = [
    ...(readFileSync(again).equals(formulas)
      ? []
      : [`a second recalculation changes the copy: ${/Wrote.*/.exec(second.out)?.[0]}`]),
    ...(sameValues ? [] : [`a second recalculation changes the copy of values: ${/Wrote.*/.exec(third.out)?.[0]}`]),
  ];
  const isComplete = !/^ {2}… and/m.test(second.out);
  if (!isComplete || !isSound(before)) return changed;
  const isKept = (place: string) => kept.some((other) => sayPlain(other) === place);
  // Where nothing can be marked as a dynamic array, answers fill more cells in the copy of values than in the other.
  const isMarked = callsOfOurs(formulas, "single").every(isKept);
  return [
    ...changed,
    ...surprises(before, formulas, kept),
    ...(isMarked ? compareValues(before, formulas, shown, kept).surprises.map((what) => `values: ${what}`) : []),
    ...callsOfOurs(shown).flatMap((place) =>
      isKept(place) ? [] : [`values: ${place} still calls a function of ours`],
    ),
  ];
};

const sayPlain = (place: string): string => `${sheetOf(place)}!${cellOf(place)}`;
