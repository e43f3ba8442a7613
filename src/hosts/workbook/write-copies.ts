import { realpath, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { Calculated } from "../engine/calculate";
import type { Spelling } from "../engine/spelling";
import type { OpenedWorkbook } from "../engine/xlsx/open-workbook";
import { leftFormulas, type Patched, patchWorkbook } from "../engine/xlsx/patch-workbook";
import { type ValuesCopy, valuesCopy } from "../engine/xlsx/values-copy";
import type { Asked } from "./recalculate-words";
import { writeSafely } from "./write-safely";

/** A file that is to be written, and what is said of it then. */
interface Copy {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly lines: readonly string[];
}

/** A sentence when a copy of values is asked for where it would take the formulas out of another file. */
export const clashOf = async ({ file, out, values }: Asked): Promise<string | undefined> => {
  if (values === undefined) return undefined;
  const place = await placeOf(values);
  if (place === (await placeOf(file)))
    return `--values ${values} would take the formulas out of the workbook itself; name another file.`;
  if (out !== undefined && place === (await placeOf(out)))
    return `--out and --values name the same file (${values}); name two.`;
  return undefined;
};

/** Which file a path leads to, also over links; where there is none yet, its place. */
const placeOf = async (path: string): Promise<string> => {
  const found = await stat(path, { bigint: true }).catch(() => undefined);
  if (found) return `${found.dev} ${found.ino}`;
  const folder = dirname(resolve(path));
  return join(await realpath(folder).catch(() => folder), basename(path));
};

/** The copies that were asked for. One that is to take the workbook's own place comes last. Throws UnreadableWorkbook. */
export const copiesOf = (
  { out, values }: Asked,
  opened: OpenedWorkbook,
  grid: Calculated,
  spelling: Spelling,
): Copy[] => [
  ...(values === undefined ? [] : [shownCopy(values, valuesCopy(opened, grid, spelling))]),
  ...(out === undefined ? [] : [judgedCopy(out, patchWorkbook(opened, grid, { left: leftFormulas(grid) }, spelling))]),
];

const shownCopy = (path: string, { bytes, shown, filled }: ValuesCopy): Copy => ({
  path,
  bytes,
  lines: [
    shown === 1
      ? `Wrote ${path}: in place of 1 formula that needs functions of BIMETAL its value stands there.`
      : `Wrote ${path}: in place of ${shown} formulas that need functions of BIMETAL their values stand there.`,
    ...filled.map(
      ({ table, column }) =>
        `  Its table "${table}" still fills the column "${column}" by a formula of BIMETAL when a row or a total is added.`,
    ),
  ],
});

const judgedCopy = (path: string, { bytes, changed }: Patched): Copy => ({
  path,
  bytes,
  lines: [`Wrote ${path}: ${changed} ${changed === 1 ? "cell has" : "cells have"} a new value.`],
});

/** Writes each copy whole or not at all; a sentence when one cannot be. */
export const writeCopies = async (copies: readonly Copy[]): Promise<string | undefined> => {
  const written: string[] = [];
  for (const { path, bytes } of copies)
    try {
      await writeSafely(path, bytes);
      written.push(path);
    } catch (thrown) {
      const { code, message } = thrown as NodeJS.ErrnoException;
      return `${path} could not be written (${code ?? message})${written.map((other) => `; ${other} was`).join("")}.`;
    }
  return undefined;
};
