import { type Cell, CellError } from "../../src/definition/cells";
import type { Parameter } from "../../src/definition/parameter";
import { oneOf, type Throw } from "./dice";
import { type Limits, limitsOf } from "./limits";

const spacing = 2 ** -52;

/** Numbers at the limits, next to them and beyond them. */
const edges = ({ lowest, highest, whole }: Limits): number[] => {
  const near = [lowest, highest].flatMap((edge) =>
    edge === 0
      ? [0, 1e-12, -1e-12, Number.MIN_VALUE]
      : [edge, edge * (1 + spacing), edge * (1 - spacing), 2 * edge, edge / 2],
  );
  return [...near, ...(whole ? [lowest + 0.5, highest - 0.5, lowest + 1, highest + 1] : [])];
};

/** Numbers that look ordinary to no limit. */
const extremes = [
  ...[0, -0, 1, -1, 0.1 + 0.2, 1e-12, 9.9e-13, 1e12, 1.0000001e12, -1e12, 1e-7, 1e6, 1e9],
  ...[Number.MIN_VALUE, Number.MAX_VALUE, -Number.MAX_VALUE, Number.MAX_SAFE_INTEGER, 2 ** 31, 2 ** 32],
];

/** No cell of a spreadsheet holds these; a host with a defect may hand them over all the same. */
const noNumbers = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

const texts = [
  ...["", " ", "x", "20", "20,5", "1e3", "TRUE", "=1+1", "-", "°", "no limit", "many", "none", "holds", "not known"],
  ...["__proto__", "constructor", "toString", "hasOwnProperty", "two\nlines", "tab\tbed", "\u0000", "💥", "C\u00a0"],
  ..."12awg, 12 AWG, AWG 12, 1/0 AWG, 0 AWG, 5/0 AWG, 250kcmil, 250 MCM, 2.5mm2, 2,5 mm², 0 mm², -3 mm²".split(", "),
  ..."1e400 mm², 99999999999 mm², 10, 7 mm², ramped, Tripped , in range, undecided until 3600 s".split(", "),
  "so long a text that no sentence would want to repeat it to its very end. ".repeat(40),
];

const others: Cell[] = [
  ...[null, true, false],
  ...["#N/A", "#DIV/0!", "#REF!", "#NAME?", "#NULL!", "#NUM!", "#VALUE!", "#SPILL!"].map((code) => new CellError(code)),
];

const known = new WeakMap<Parameter, Throw<Cell>>();

/** A cell at the limits of a parameter or beyond what it takes, or with what stands in cells by mistake. */
export const strangeCell = (parameter: Parameter): Throw<Cell> => {
  const made = known.get(parameter) ?? oneOf<Cell>(...strangeCells(parameter));
  known.set(parameter, made);
  return made;
};

const strangeCells = (parameter: Parameter): Cell[] => {
  const limits = limitsOf(parameter);
  const numbers = limits.takesNumbers ? edges(limits) : [];
  const words = [...limits.words, ...(parameter.choices ?? [])].map((word) => oddly(String(word)));
  // Twice the edges: they are what this parameter alone has.
  return [...numbers, ...numbers, ...words, ...extremes, ...noNumbers, ...texts, ...others];
};

/** A word as some people type it: case and spaces are forgiven. */
export const oddly = (word: string): string => `  ${word.toUpperCase().replaceAll(" ", "  ")} `;

/** A cell that counts as blank on some host. */
export const blankCell = oneOf<Cell>(null, 0, "");
