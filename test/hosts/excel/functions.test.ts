import { type Answer, type Cell, CellError, isRange, type Range } from "../../../src/definition/cells";
import type { AnyDefinition, Row } from "../../../src/definition/define";
import { Memory } from "../../../src/definition/memory";
import type { Parameter } from "../../../src/definition/parameter";
import { catalogue } from "../../../src/functions";
import { associate } from "../../../src/hosts/excel/associate";
import { asExcelSends } from "./as-excel-sends";
import type { Call, Reply } from "./excel-host";
import { type ExcelRuntime, startExcelRuntime } from "./runtime";

// Every sheet function called as Excel calls it, through Microsoft's own runtime. The expected answers are those of the worked
// examples, which say how each was got; all calls go in one batch, as a recalculation sends them.

interface Case {
  readonly name: string;
  readonly call: Call;
  readonly check: (answer: unknown[][]) => void;
}

const parametersOf = ({ parameters }: AnyDefinition) => Object.entries(parameters as Record<string, Parameter>);
const rowsOf = (gives: Row | readonly Row[]): readonly Row[] =>
  Array.isArray(gives[0]) ? (gives as readonly Row[]) : [gives as Row];

/** What an example promises where the cell keeps the promise, else the cell as it came, so that a failure shows both. */
const kept = (got: unknown, want: Answer, within: number): unknown => {
  const isKept =
    typeof got === "object" && got !== null
      ? want === "refused" || (got as { message?: string }).message === want
      : typeof got === "number" && typeof want === "number"
        ? Math.abs(got - want) <= within * Math.max(Math.abs(want), 1e-300)
        : got === want;
  return isKept ? want : got;
};

const refusal = (sentence: RegExp, code = "#VALUE!"): unknown =>
  expect.objectContaining({ code, message: expect.stringMatching(sentence) });
const refusedRow = (definition: AnyDefinition, sentence: RegExp): unknown[] =>
  definition.results.map(() => refusal(sentence));

const casesOf = (definition: AnyDefinition): Case[] => {
  const { name: id, examples } = definition;
  const cases: Case[] = [];
  const add = (name: string, cells: readonly (Cell | Range)[], check: Case["check"]) =>
    cases.push({
      name: `${id} ${name}`,
      check,
      call: { id, handed: asExcelSends(definition, cells), address: "Log!F2" },
    });

  for (const [which, { cells, gives, within = 1e-9 }] of examples.entries()) {
    const rows = rowsOf(gives);
    add(`gives worked example ${which + 1}`, cells, (answer) =>
      expect(rows.map((row, r) => row.map((want, c) => kept(answer[r]?.[c], want, within)))).toEqual(rows),
    );
  }

  const parameters = parametersOf(definition);
  const [first] = parameters;
  if (!first) return cases;
  add(
    "refuses an error cell by its sentence",
    [new CellError("#N/A"), ...(examples[0]?.cells.slice(1) ?? [])],
    (answer) => expect(answer).toEqual([refusedRow(definition, /#N\/A/)]),
  );
  if (first[1].otherwise === undefined)
    add("refuses an argument left out by its sentence", [], (answer) =>
      expect(answer).toEqual([refusedRow(definition, /\w{3}.*\.$/)]),
    );

  // Single cells of a worked example become columns: the same row twice, then a blank one, then one with an error in it.
  const example = examples.find(({ cells }) => cells.every((cell) => !isRange(cell)));
  const rowPlaces = parameters.flatMap(([, { spread }], place) =>
    spread === "row" && example?.cells[place] !== undefined && example.cells[place] !== null ? [place] : [],
  );
  if (!example || rowPlaces.length === 0 || definition.answers === "rows") return cases;
  const within = example.within ?? 1e-9;
  for (const [how, blank] of [
    ["0, as on the desktop", 0],
    ["null, as on the web", null],
  ] as const) {
    const columns = example.cells.map((single, place): Cell | Range => {
      if (!rowPlaces.includes(place)) return single;
      const last = place === rowPlaces[0] ? new CellError("#DIV/0!") : (single as Cell);
      return [[single as Cell], [single as Cell], [blank], [last]];
    });
    add(`answers ranges row by row; a blank row, handed over as ${how}, is blank`, columns, (answer) => {
      const row = rowsOf(example.gives)[0] ?? [];
      const asPromised = answer.slice(0, 2).map((cells) => row.map((want, c) => kept(cells[c], want, within)));
      expect(asPromised).toEqual([row, row]);
      expect(answer.slice(2)).toEqual([definition.results.map(() => ""), refusedRow(definition, /#DIV\/0!/)]);
    });
  }
  return cases;
};

const cases = catalogue.flatMap(casesOf);
let runtime: ExcelRuntime;
let replies: readonly Reply[];

beforeAll(async () => {
  runtime = startExcelRuntime();
  Object.assign(globalThis, { CustomFunctions: runtime.globals.CustomFunctions });
  associate(catalogue, new Memory());
  replies = await runtime.host.callAll(cases.map(({ call }) => call));
});
afterAll(() => runtime.close());

test.each(cases.map(({ name, check }, place) => ({ name, check, place })))("$name", ({ check, place }) => {
  const { ok, value } = replies[place] as Reply;
  expect(ok).toBe(true);
  const answer = value as unknown[][];
  // A null in a matrix shows as 0: none may reach Excel.
  expect(answer.flat()).not.toContain(null);
  expect(new Set(answer.map((row) => row.length)).size).toBe(1);
  check(answer);
});
