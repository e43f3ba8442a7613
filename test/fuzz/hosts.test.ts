import fc from "fast-check";
import { BadInput, type Refusal } from "../../src/definition/bad-input";
import { type Answer, type Argument, CellError, isRange } from "../../src/definition/cells";
import { Memory } from "../../src/definition/memory";
import { catalogue } from "../../src/functions";
import { calculate } from "../../src/hosts/engine/calculate";
import { associate } from "../../src/hosts/excel/associate";
import { asExcelSends } from "../hosts/excel/as-excel-sends";
import { startExcelRuntime } from "../hosts/excel/runtime";
import { asReferred, canStand, laidOut } from "./as-cells";
import { parametersOf, type Question } from "./question";
import { questions } from "./questions";
import { ask, isRefusal } from "./road";

const ofEach = 10;

const sample: readonly Question[] = [...questions.values()]
  .flatMap((question) => fc.sample(question, ofEach))
  .filter(canStand);

const codeOf = (refusal: Refusal): string => (refusal instanceof BadInput ? "#VALUE!" : "#N/A");
const shown = (cell: Answer | Refusal): unknown =>
  isRefusal(cell) ? `${codeOf(cell)} ${cell.message}` : Object.is(cell, -0) ? 0 : cell;

test("the sample asks about every function", () => {
  expect(new Set(sample.map(({ definition }) => definition.name)).size).toBe(catalogue.length);
});

test("formulas in a workbook, calculated by the grid engine, answer as the road does", async () => {
  const expected = sample.map((question) => ask(question.with(question.args.map(asReferred))));
  const { cells, formulas } = laidOut(
    sample,
    expected.map((rows) => rows.length),
  );
  const grid = await calculate(
    {
      sheets: [
        { name: "Calls", cells: formulas },
        { name: "Cells", cells },
      ],
    },
    catalogue,
  );
  expect(grid.kept).toEqual([]);
  expect(grid.defects).toEqual([]);
  const differing = formulas.flatMap(({ row: top, formula }, i) => {
    const got = expected[i]?.map((line, r) =>
      line.map((_, column) => {
        const place = { sheet: "Calls", row: top + r, column };
        const value = grid.valueAt(place);
        return value instanceof CellError ? `${value.code} ${grid.messageAt(place)}` : value;
      }),
    );
    const want = expected[i]?.map((line) => line.map(shown));
    return JSON.stringify(got) === JSON.stringify(want) ? [] : [{ formula, asked: fc.stringify(sample[i]), got, want }];
  });
  expect(differing).toEqual([]);
  grid.close();
});

test("a text typed into a formula stays one, whatever number it looks like", async () => {
  const texts = ["1e3", "5%", "1,000", "2024-01-01", "1/2", "$5", "20"];
  const cells = texts.map((text, row) => ({
    row,
    column: 0,
    value: null,
    formula: `=BIMETAL.CONTACT.LIMIT("${text}")`,
  }));
  const grid = await calculate({ sheets: [{ name: "Calls", cells }] }, catalogue);
  for (const [row, text] of texts.entries())
    expect(grid.messageAt({ sheet: "Calls", row, column: 0 })).toContain(`wanted, not the text "${text}"`);
  grid.close();
});

test("called through Excel's own runtime, a batch answers as the road does", async () => {
  const runtime = startExcelRuntime();
  try {
    Object.assign(globalThis, { CustomFunctions: runtime.globals.CustomFunctions });
    associate(catalogue, new Memory());
    // Excel itself refuses a formula with more arguments than a function has.
    const fitting = sample.filter(({ definition, args }) => {
      const parameters = parametersOf(definition);
      return args.length <= parameters.length || parameters.at(-1)?.[1].repeating;
    });
    const calls = fitting.map(({ definition, args }) => ({
      id: definition.name,
      handed: asExcelSends(definition, args.map(asHanded)),
      address: "Log!F2",
    }));
    const replies = await runtime.host.callAll(calls);
    const differing = fitting.flatMap((question, i) => {
      const got = ((replies[i]?.value ?? []) as unknown[][]).map((row) => row.map(received));
      const want = ask(question).map((row) => row.map(shown));
      return JSON.stringify(got) === JSON.stringify(want) ? [] : [{ asked: fc.stringify(question), got, want }];
    });
    expect(differing).toEqual([]);
  } finally {
    runtime.close();
  }
});

/** Excel's null is an argument left out; a blank cell comes in a range of its own. */
const asHanded = (argument: Argument) => (argument === undefined ? null : isRange(argument) ? argument : [[argument]]);

const received = (cell: unknown): unknown => {
  if (typeof cell !== "object" || cell === null) return cell;
  const { code, message } = cell as { code: string; message: string };
  return `${code} ${message}`;
};
