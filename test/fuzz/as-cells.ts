import { type Argument, type Cell, isRange } from "../../src/definition/cells";
import type { SheetCell } from "../../src/hosts/engine/book";
import { sayBlock } from "../../src/hosts/engine/place";
import type { Question } from "./question";

/** Questions laid out as a workbook: the arguments on one sheet, the formulas that refer to them on another. */
interface Layout {
  readonly cells: readonly SheetCell[];
  readonly formulas: readonly SheetCell[];
}

/** The questions of a sample that a workbook can hold: no range without cells, no number that is none. */
export const canStand = ({ args }: Question): boolean =>
  args.every((argument) => !isRange(argument) || (argument.length > 0 && argument.every((row) => row.length > 0))) &&
  args.flat(2).every((cell) => typeof cell !== "number" || Number.isFinite(cell));

/** `rows` tells how many rows each answer fills. */
export const laidOut = (questions: readonly Question[], rows: readonly number[]): Layout => {
  const cells: SheetCell[] = [];
  const formulas: SheetCell[] = [];
  let [row, below] = [0, 0];
  questions.forEach(({ definition, args }, i) => {
    const texts = args.map((argument, place) => {
      // Some numbers and words are typed into the formula itself, as people do.
      const typed = (i + place) % 3 === 0 ? literal(argument) : undefined;
      if (typed !== undefined || argument === undefined) return typed ?? "";
      const range = isRange(argument) ? argument : [[argument]];
      const block = { row, column: 0, rows: range.length, columns: range[0]?.length ?? 1 };
      range.forEach((line, r) => {
        line.forEach((value, column) => {
          if (value !== null) cells.push({ row: row + r, column, value });
        });
      });
      row += range.length;
      return `Cells!${sayBlock(block)}`;
    });
    formulas.push({ row: below, column: 0, value: null, formula: `=BIMETAL.${definition.name}(${texts.join(",")})` });
    below += rows[i] ?? 1;
  });
  return { cells, formulas };
};

const literal = (argument: Argument): string | undefined => {
  if (typeof argument === "number") return /^-?[\d.]+$/.test(String(argument)) ? String(argument) : undefined;
  return typeof argument === "string" && argument.length < 200 ? `"${argument.replaceAll('"', '""')}"` : undefined;
};

/** A range of one cell reaches a function as that cell. */
export const asReferred = (argument: Argument): Argument =>
  isRange(argument) && argument.length === 1 && argument[0]?.length === 1 ? (argument[0][0] as Cell) : argument;
