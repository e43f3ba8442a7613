import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { books } from "../../examples/source/books";
import { madeOf } from "../../examples/source/made";
import { type Cell, CellError } from "../../src/definition/cells";
import { catalogue } from "../../src/functions";
import type { SheetCell } from "../../src/hosts/engine/book";
import { type Calculated, calculate } from "../../src/hosts/engine/calculate";
import { isIn } from "../../src/hosts/engine/place";
import { readWorkbook } from "../../src/hosts/engine/xlsx/open-workbook";
import { expectedAnswers } from "./independent/answers.mjs";
import { fromCsv as linesOf, toCsv } from "./independent/csv.mjs";

const examples = join(__dirname, "../../examples");
const bytesOf = (file: string): Uint8Array => new Uint8Array(readFileSync(join(examples, file)));
const fromCsv: (text: string) => string[][] = linesOf;
const textOf = (file: string): string => readFileSync(join(examples, file), "utf8");
const expectedFilesOf = (workbook: string): string[] =>
  readdirSync(examples).filter(
    (file) => file.startsWith(workbook.replace("xlsx", "")) && file.endsWith(".expected.csv"),
  );

const shown = (cell: Cell): Exclude<Cell, CellError> => (cell instanceof CellError ? cell.code : cell);

/** The last figures of a number are not the same in every engine of JavaScript, nor any of one that is 0 but for rounding. */
const rounded = (value: number): string => (Math.abs(value) < 1e-12 ? "0" : value.toPrecision(7));

/**
 * What stands in a workbook, its numbers rounded. The rows of an explanation are left out: they follow every wording of the function
 * that they explain.
 */
const contentOf = (bytes: Uint8Array) =>
  readWorkbook(bytes, catalogue).sheets.map(({ name, cells, widths, frozen, choices }) => {
    const explanations = cells.filter(({ formula }) => formula?.startsWith("=BIMETAL.EXPLAIN("));
    const isExplained = (cell: SheetCell) =>
      explanations.some(({ row, column, spill }) => isIn({ row, column, rows: 1, columns: 1, ...spill }, cell));
    return {
      name,
      widths,
      frozen,
      choices,
      explanations: explanations.map(({ row, column, formula }) => ({ row, column, formula })),
      cells: cells
        .filter((cell) => !isExplained(cell))
        .map(({ value, ...cell }) => ({
          ...cell,
          value: typeof value === "number" ? rounded(value) : shown(value),
        })),
    };
  });

/** The sheet, and the row in it, that holds all these headings, and the column of each. */
const placeOf = (view: Calculated, headings: readonly string[]) => {
  for (const sheet of view.sheets)
    for (let row = 0; row < 30; row++) {
      const cells = Array.from({ length: 30 }, (_, column) => view.valueAt({ sheet, row, column }));
      const columns = headings.map((heading) => cells.indexOf(heading));
      if (!columns.includes(-1)) return { sheet, row, columns };
    }
  throw new Error(`No row has the headings ${headings.join(", ")}.`);
};

/**
 * Of a value to itself. In the cabinet air was read between the rows of a printed table, where the program uses fits of it that are
 * good to 0.1 %; the probability to hold is an integral, in steps of a different kind.
 */
const tolerance = (file: string): number =>
  /^panel-estimate|warm-panel|breaker-study\.holds/.test(file) ? 5e-4 : 1e-6;

const differs = (is: Cell, expected: string, within: number): boolean => {
  const cell = shown(is);
  if (expected === "") return cell !== "" && cell !== null;
  if (typeof cell === "number") return !(Math.abs(cell - Number(expected)) <= within * Math.abs(Number(expected)));
  if (expected.endsWith("…")) return !String(cell).startsWith(expected.slice(0, -1));
  return cell !== expected;
};

describe.each(Object.keys(books))("%s", (file) => {
  let view: Calculated;
  beforeAll(async () => {
    view = await calculate(readWorkbook(bytesOf(file), catalogue), catalogue);
  });
  afterAll(() => view.close());

  test("is what its source makes: `npm run examples` makes it anew", async () => {
    const made = await madeOf(books[file] as (typeof books)[string], catalogue);
    expect(contentOf(made)).toEqual(contentOf(bytesOf(file)));
  });

  test("calculates to the values that were worked out without this program", () => {
    const files = expectedFilesOf(file);
    expect(files.length).toBeGreaterThan(0);
    for (const expectedFile of files) {
      const [headings = [], ...lines] = fromCsv(textOf(expectedFile));
      expect(lines.length).toBeGreaterThan(1);
      const { sheet, row, columns } = placeOf(view, headings);
      const wrong = lines.flatMap((line, i) =>
        columns.flatMap((column, j) => {
          const is = view.valueAt({ sheet, row: row + 1 + i, column });
          const expected = line[j] ?? "";
          return differs(is, expected, tolerance(expectedFile))
            ? [`${sheet}, ${line[0]}, ${headings[j]}: ${shown(is)} instead of ${expected}`]
            : [];
        }),
      );
      expect(wrong).toEqual([]);
    }
  });

  test("calculates every formula, and names a reason in every refused cell", () => {
    expect(view.kept).toEqual([]);
    expect(view.defects).toEqual([]);
    const silent = view.sheets.flatMap((sheet) =>
      view.spillsOn(sheet).flatMap(({ row, column, rows, columns }) =>
        Array.from({ length: rows * columns }, (_, i) => ({
          sheet,
          row: row + Math.floor(i / columns),
          column: column + (i % columns),
        })).filter((place) => view.valueAt(place) instanceof CellError && !view.messageAt(place)),
      ),
    );
    expect(silent).toEqual([]);
  });

  test("keeps our functions as a spreadsheet binds them: prefixed, as dynamic arrays, with their metadata", () => {
    const parts = unzipSync(bytesOf(file));
    const formulas = Object.keys(parts)
      .filter((part) => part.startsWith("xl/worksheets/sheet"))
      .flatMap((part) => [
        ...Buffer.from(parts[part] as Uint8Array)
          .toString("utf8")
          .matchAll(/<c ([^>]*)><f([^>]*)>([^<]*)<\/f>/g),
      ])
      .filter(([, , , formula]) => formula?.includes("BIMETAL"));
    expect(formulas.length).toBeGreaterThan(3);
    for (const [, cell, element, formula] of formulas) {
      expect(formula?.replaceAll("_xldudf_BIMETAL_", "")).not.toContain("BIMETAL");
      expect(cell).toContain('cm="1"');
      expect(element).toMatch(/ t="array" ref="[A-Z0-9:]+"/);
    }
    expect(Buffer.from(parts["xl/metadata.xml"] ?? []).toString("utf8")).toContain('name="XLDAPR"');
  });
});

describe("the expected values", () => {
  test("are the ones that the independent computation gives today", async () => {
    const answers = await expectedAnswers();
    const files = readdirSync(examples).filter((file) => file.endsWith(".expected.csv"));
    expect(Object.keys(answers).sort()).toEqual(files.sort());
    for (const [file, lines] of Object.entries(answers)) expect(textOf(file)).toBe(toCsv(lines));
  }, 90_000);

  test("take nothing from this program", () => {
    const folder = join(__dirname, "independent");
    for (const file of readdirSync(folder))
      for (const [, from] of readFileSync(join(folder, file), "utf8").matchAll(/\bfrom "([^"]+)"/g))
        expect(from).toMatch(/^\.\/[\w-]+\.mjs$|^node:|^exceljs$/);
  });
});

test("the log shows what a log meets: sound trials and bad ones, held ones, and slips of every kind", () => {
  const [headings = [], ...lines] = fromCsv(textOf("test-log.expected.csv"));
  const verdicts = lines.map((line) => line[headings.indexOf("Verdict")] ?? "");
  expect(lines.length).toBeGreaterThanOrEqual(60);
  for (const kind of [
    "in range",
    "early",
    "late",
    "outside the computed band",
    "undecided until 3600 s",
    "#VALUE!",
    "#N/A",
  ])
    expect(verdicts).toContain(kind);
});
