import fc from "fast-check";
import { type Cell, CellError } from "../../../src/definition/cells";
import type { SheetCell } from "../../../src/hosts/engine/book";
import { type Calculated, calculate } from "../../../src/hosts/engine/calculate";
import { type Block, sayBlock } from "../../../src/hosts/engine/place";
import { arithmetic } from "./second-engine/arithmetic";
import type { Comparison, Given } from "./second-engine/compare";
import { distributions } from "./second-engine/distributions";
import { lookups } from "./second-engine/lookups";
import { statistics } from "./second-engine/statistics";
import { texts } from "./second-engine/texts";

// The built-ins of the grid against a second engine that shares nothing with it, over generated arguments.
// What the second engine, a general-purpose library of spreadsheet functions, is asked beside ours: each built-in with arguments for
// which the library keeps to Microsoft's description of the function. Where it does not, the arguments leave that out, and say so.
// Left out altogether, each because the library is wrong by that description or by hand:
//   ATAN2 takes its arguments the other way about; SORT sorts numbers as texts; UNIQUE tells rows apart by identity, not by value;
//   MODE.SNGL answers where no value repeats; TRIMMEAN cuts before it sorts; DAYS360 miscounts to a 30th; LOGEST rounds to six places;
//   AVERAGEIF, AVERAGEIFS, MAXIFS and MINIFS have no answer where nothing meets the condition; T.DIST is #NUM! throughout;
//   ROWS and COLUMNS refuse a column of cells.
// It has no LET, LAMBDA, MAP, XLOOKUP, XMATCH, FILTER, SEQUENCE and SORTBY: conformance.test.ts holds those.

const comparisons = [...arithmetic, ...statistics, ...texts, ...lookups, ...distributions];

const CASES = 16;
/** Rows that one case has for its ranges and its answer. */
const ROOM = 10;
const ANSWER = 20;

const isRange = (given: Given): given is readonly (readonly Cell[])[] => Array.isArray(given);

/** A value as it is typed into a formula. */
const typed = (value: Cell): string =>
  typeof value === "string" ? `"${value.replaceAll('"', '""')}"` : String(value).toUpperCase();

/** Every other case stands in cells, the rest in the formula where that can be. */
const cellsOf = (name: string, given: readonly Given[], place: number): SheetCell[] => {
  const cells: SheetCell[] = [];
  const isTyped = place % 2 === 1 && given.every((one) => !isRange(one) && one !== null);
  let column = 0;
  const words = given.map((one) => {
    if (isTyped) return typed(one as Cell);
    const rows = isRange(one) ? one : [[one]];
    const block: Block = { row: place * ROOM, column, rows: rows.length, columns: rows[0]?.length ?? 0 };
    rows.forEach((values, r) => {
      values.forEach((value, c) => {
        if (value !== null) cells.push({ row: block.row + r, column: column + c, value });
      });
    });
    column += block.columns;
    return sayBlock(block);
  });
  return [...cells, { row: place * ROOM, column: ANSWER, value: null, formula: `=${name}(${words.join(",")})` }];
};

const asked = comparisons.map((comparison, sheet) => {
  return { ...comparison, sheet: `S${sheet}`, cases: fc.sample(comparison.arguments, { numRuns: CASES, seed: 20 }) };
});

type Plain = number | string | boolean;

const ofOurs = (value: Cell): Plain => (value instanceof CellError ? value.code : (value ?? 0));

const ofTheirs = (value: unknown): Plain => {
  if (value instanceof Error) return value.message;
  // Its dates are those of the local calendar.
  if (value instanceof Date)
    return Math.round(Date.UTC(value.getFullYear(), value.getMonth(), value.getDate()) / 86_400_000) + 25_569;
  return (value ?? 0) as Plain;
};

const isAlike = (ours: Plain | undefined, theirs: Plain | undefined, tolerance: number): boolean =>
  typeof ours === "number" && typeof theirs === "number"
    ? Math.abs(ours - theirs) <= tolerance * Math.max(1e-3, Math.abs(ours), Math.abs(theirs))
    : ours === theirs;

const answerOf = (grid: Calculated, sheet: string, place: number): Plain[][] => {
  const at = { sheet, row: place * ROOM, column: ANSWER };
  const { rows, columns } = grid.spillAt(at) ?? { rows: 1, columns: 1 };
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => ofOurs(grid.valueAt({ sheet, row: at.row + r, column: ANSWER + c }))),
  );
};

const theirAnswer = ({ library }: Comparison, given: readonly Given[]): Plain[][] => {
  const answer = library(...(structuredClone(given) as never[]));
  const rows = Array.isArray(answer) ? (Array.isArray(answer[0]) ? (answer as unknown[][]) : [answer]) : [[answer]];
  return rows.map((row) => row.map(ofTheirs));
};

let grid: Calculated;
beforeAll(async () => {
  const sheets = asked.map(({ name, sheet, cases }) => {
    return { name: sheet, cells: cases.flatMap((given, place) => cellsOf(name, given, place)) };
  });
  grid = await calculate({ sheets }, []);
});

test.each(asked)("$name gives what the second engine gives", (comparison) => {
  const { sheet, cases, tolerance } = comparison;
  const differing = cases.flatMap((given, place) => {
    const ours = answerOf(grid, sheet, place);
    const theirs = theirAnswer(comparison, given);
    const places = Math.max(ours.flat().length, theirs.flat().length);
    const alike = Array.from({ length: places }).every((_, at) =>
      isAlike(ours.flat()[at], theirs.flat()[at], tolerance),
    );
    return alike && ours.length === theirs.length ? [] : [{ given, ours, theirs }];
  });
  expect(differing).toEqual([]);
  expect(grid.kept).toEqual([]);
});
