import { CellError } from "../../definition/cells";
import type { Book } from "../engine/book";
import type { Calculated } from "../engine/calculate";
import { sayPlace } from "../engine/place";
import { shortened } from "../engine/plain-line";
import type { Spelling } from "../engine/spelling";

/** Cells named in a summary; beyond these their number alone is told. */
const MOST_NAMED = 200;
/** Of a longer formula the beginning is told. */
const MOST_FORMULA = 200;

/** What became of a workbook's formulas, for a person to read. */
interface Summary {
  readonly lines: readonly string[];
  readonly refusals: number;
}

export const summaryOf = (name: string, book: Book, grid: Calculated, spelling: Spelling): Summary => {
  const formulas = book.sheets.flatMap((sheet) =>
    sheet.cells.flatMap(({ row, column, formula }) =>
      formula === undefined ? [] : [{ sheet: sheet.name, row, column, formula }],
    ),
  );
  const ours = formulas.filter(({ formula }) => spelling.isOurs(formula));
  const refusals = ours.flatMap((place) => {
    const { row, column, rows, columns } = grid.spillAt(place) ?? { ...place, rows: 1, columns: 1 };
    const said = new Set<string>();
    for (let r = row; r < row + rows; r++)
      for (let c = column; c < column + columns; c++) {
        const cell = { sheet: place.sheet, row: r, column: c };
        const value = grid.valueAt(cell);
        // One sentence for a row, at its first cell.
        const sentence = value instanceof CellError ? (grid.messageAt(cell) ?? "") : "";
        if (
          value instanceof CellError &&
          ![...said].some((line) => line.startsWith(`${r} `) && line.endsWith(sentence))
        )
          said.add(`${r} ${sayPlace(cell)}: ${value.code}${sentence && `, ${sentence}`}`);
      }
    return [...said].map((line) => line.slice(line.indexOf(" ") + 1));
  });
  return {
    refusals: refusals.length,
    lines: [
      `${name}: ${count(formulas.length, "formula", "formulas")}, ${ours.length} with functions of BIMETAL.`,
      ...listed(refusals, "cell is refused or shows an error", "cells are refused or show an error"),
      ...listed(
        grid.kept.map(({ place, formula, why }) => `${sayPlace(place)}: ${why} ${shortened(formula, MOST_FORMULA)}`),
        "formula was not calculated and keeps its value",
        "formulas were not calculated and keep their values",
      ),
      ...listed(
        grid.defects.map(
          ({ place, definition, thrown }) => `${sayPlace(place)}: ${definition.name}: ${String(thrown)}`,
        ),
        "defect of this program, please report it",
        "defects of this program, please report them",
      ),
    ],
  };
};

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

const listed = (lines: readonly string[], one: string, many: string): string[] => {
  if (lines.length === 0) return [];
  const more = lines.length - MOST_NAMED;
  return [
    `${count(lines.length, one, many)}:`,
    ...lines.slice(0, MOST_NAMED).map((line) => `  ${line}`),
    ...(more > 0 ? [`  … and ${more} more.`] : []),
  ];
};
