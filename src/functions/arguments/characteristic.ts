import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { type Cell, CellError, type Range, sayCell } from "../../definition/cells";
import { measurable, type Parameter, plain } from "../../definition/parameter";
import { errorSentence } from "../../definition/refusal-sentence";
import { say } from "../../metrology/say";
import type { Characteristic } from "../../trip/characteristic";
import { knownCharacteristics } from "../../trip/known";
import type { BandRow, OwnBand } from "../../trip/own-band";

const byName = new Map(knownCharacteristics.map((characteristic) => [plain(characteristic.name), characteristic]));
const names = knownCharacteristics.map(({ name }) => name);
const known = `known are ${names.map((name) => `"${name}"`).join(", ")}, or a range of three columns (multiple, shortest, longest)`;

/** "C20" and "C 16", as a breaker's face has them: the letter and the rating are two arguments. */
const ratingBeside = (cell: Cell): string => {
  const [, letter] = typeof cell === "string" ? (/^\s*([BCD])\s*\d+(\.\d+)?\s*A?\s*$/i.exec(cell) ?? []) : [];
  return letter === undefined
    ? ""
    : ` (the characteristic alone is "${letter.toUpperCase()}"; the number is the rating)`;
};

/**
 * A characteristic by name (one cell, or a column with a name per row), or, told by its three columns, a band of the tester's own
 * that holds for all rows: multiple of the rating, shortest s (0: no minimum), longest s ("no limit").
 */
export const characteristic: Parameter<Characteristic | OwnBand> = {
  spread: "row",
  schema: z.enum(names as [string, ...string[]]),
  unit: "",
  meaning: `the kind of breaker: ${names.join(", ")}; or a range of rows (multiple, shortest, longest), a band of your own`,
  choices: names,
  read: (cell, name) => {
    const found = typeof cell === "string" ? byName.get(plain(cell)) : undefined;
    if (found) return found;
    if (cell === null || cell === "") throw new BadInput(`${name} is blank.`);
    if (cell instanceof CellError) throw new BadInput(errorSentence(name, cell, names[1]));
    throw new BadInput(`${name}: ${sayCell(cell)} is not known${ratingBeside(cell)}; ${known}.`);
  },
  // Three cells in one row are no band, which has two rows at least, but three names that lie across.
  readBlock: (range, name) => (range.length > 1 && range[0]?.length === 3 ? readBand(range, name) : undefined),
};

const readBand = (range: Range, name: string): OwnBand => {
  const rows = range
    .filter((row) => row.some((cell) => cell !== null && cell !== "" && cell !== 0))
    .map((row, i) => readRow(row, `${name}, row ${i + 1} of the band`));
  if (rows.length < 2)
    throw new BadInput(`${name}: an own band needs at least two rows (multiple, shortest, longest).`);
  rows.forEach((row, i) => {
    const before = rows[i - 1];
    if (before && row.multiple <= before.multiple)
      throw new BadInput(
        `${name}: the multiples of an own band rise from row to row; ${row.multiple} × stands after ${before.multiple} ×.`,
      );
    if (before && (row.shortest > before.shortest || row.longest > before.longest))
      throw new BadInput(
        `${name}: more current never takes longer; at ${row.multiple} × the own band asks for a longer time than at ${before.multiple} ×.`,
      );
  });
  return { rows };
};

const isMeasured = (cell: Cell | undefined): cell is number => typeof cell === "number" && measurable(cell);

const readRow = (row: readonly Cell[], name: string): BandRow => {
  const [multiple, shortest, longestCell] = row;
  const longest = typeof longestCell === "string" && plain(longestCell) === "no limit" ? Infinity : longestCell;
  if (!isMeasured(multiple) || multiple <= 0)
    throw new BadInput(`${name}: a multiple of the rating above 0 is wanted, not ${sayCell(multiple ?? null)}.`);
  if (!isMeasured(shortest) || shortest < 0)
    throw new BadInput(`${name}: a shortest time of at least 0 s is wanted, not ${sayCell(shortest ?? null)}.`);
  if (longest !== Infinity && (!isMeasured(longest) || longest <= 0))
    throw new BadInput(`${name}: a longest time above 0 s, or "no limit", is wanted, not ${sayCell(longest ?? null)}.`);
  if (longest < shortest)
    throw new BadInput(
      `${name}: the longest time (${say(longest, "s")}) is below the shortest (${say(shortest, "s")}).`,
    );
  return { multiple, shortest, longest };
};
