import { readdirSync } from "node:fs";
import { join } from "node:path";
import { call } from "../src/definition/call";
import { type Answer, type Argument, type Cell, isRange, type Range } from "../src/definition/cells";
import type { Row } from "../src/definition/define";
import { explained } from "../src/definition/explained";
import type { Parameter } from "../src/definition/parameter";
import { catalogue } from "../src/functions";

// What every sheet function owes: its file, its texts, its worked examples, an explanation, and never a number that is none.

const folder = join(__dirname, "../src/functions");
const files = readdirSync(folder).filter((name) => name.endsWith(".ts") && name !== "index.ts");

test("each file is one function of the catalogue, and its name is the function's address", () => {
  const names = catalogue.map(({ name }) => `${name.toLowerCase()}.ts`);
  expect([...names].sort()).toEqual([...files].sort());
  expect(new Set(names).size).toBe(names.length);
});

test("names are upper-case words with at most one dot, so that a file's mangled form can be read back", () => {
  for (const { name } of catalogue) expect(name).toMatch(/^[A-Z]+(\.[A-Z]+)?$/);
});

const rowsOf = (gives: Row | readonly Row[]): readonly Row[] =>
  Array.isArray(gives[0]) ? (gives as readonly Row[]) : [gives as Row];
const argumentsOf = (cells: readonly (Cell | Range)[]) => cells.map((cell) => (cell === null ? undefined : cell));
const close = (got: unknown, want: Answer, within: number): boolean =>
  typeof want === "number" && typeof got === "number"
    ? Math.abs(got - want) <= within * Math.max(Math.abs(want), 1e-300)
    : got === want;

describe.each(catalogue.map((definition) => [definition.name, definition] as const))("%s", (_, definition) => {
  const { examples, parameters } = definition;
  const list = Object.entries(parameters as Record<string, Parameter>);

  test("says what it is, in which units, from where, with which cautions", () => {
    expect(definition.summary.length).toBeGreaterThan(20);
    expect(definition.sources.length).toBeGreaterThan(0);
    expect(definition.cautions.length).toBeGreaterThan(0);
    expect(definition.results.length).toBeGreaterThan(0);
    for (const [, parameter] of list) expect(parameter.meaning.length).toBeGreaterThan(5);
    for (const result of definition.results) expect(result.meaning.length).toBeGreaterThan(3);
    for (const text of [definition.summary, ...definition.cautions]) expect(text).toMatch(/[.!?)]$/);
    expect(`${definition.summary} ${definition.cautions.join(" ")}`).not.toMatch(/\b(is|are) safe\b/i);
  });

  test("arguments that may be left out come last", () => {
    const mayBeLeftOut = list.map(([, { otherwise }]) => otherwise !== undefined);
    expect(mayBeLeftOut).toEqual([...mayBeLeftOut].sort((a, b) => Number(a) - Number(b)));
  });

  test("has worked examples that say how they were worked, and gives them", () => {
    expect(examples.length).toBeGreaterThan(0);
    for (const { cells, gives, within = 1e-9, worked } of examples) {
      expect(worked.length).toBeGreaterThan(10);
      const got = call(definition, argumentsOf(cells));
      const want = rowsOf(gives);
      const all =
        got.length >= want.length &&
        want.every((row, i) =>
          row.every((value, j) => {
            const cell = got[i]?.[j];
            return cell instanceof Error ? cell.message === value || value === "refused" : close(cell, value, within);
          }),
        );
      expect({ cells, got: all ? want : got }).toEqual({ cells, got: want });
    }
  });

  test("explains its examples: steps, an answer in words, results with units, no number that is none", () => {
    for (const { cells } of examples) {
      const told = explained(definition, argumentsOf(cells));
      expect(told.refusal).toBeUndefined();
      expect(told.steps.length).toBeGreaterThan(0);
      expect(told.answer.length).toBeGreaterThan(5);
      expect(told.sources.length).toBeGreaterThan(0);
      const words = JSON.stringify([told.steps, told.answer, told.results, told.cautions, told.inputs]);
      expect(words).not.toMatch(/NaN|Infinity|undefined|\[object/);
      for (const { tex, plain } of told.steps) if (tex) expect(plain).toBeTruthy();
    }
  });

  test("pictures are finite and lie inside their axes", () => {
    for (const { cells } of examples) {
      const { plot } = explained(definition, argumentsOf(cells));
      if (!plot) continue;
      const { x, y, bands = [], lines = [], points = [] } = plot;
      const xs = [
        ...bands.flatMap(({ samples }) => samples.map((s) => s.x)),
        ...lines.flatMap(({ samples }) => samples.map((s) => s.x)),
        ...points.map((p) => p.x),
      ];
      const ys = [
        ...bands.flatMap(({ samples }) => samples.flatMap((s) => [s.low, s.high])),
        ...lines.flatMap(({ samples }) => samples.map((s) => s.y)),
        ...points.map((p) => p.y),
      ];
      expect(xs.length).toBeGreaterThan(0);
      for (const [axis, values] of [
        [x, xs],
        [y, ys],
      ] as const)
        for (const value of values)
          expect({
            axis: axis.quantity,
            ok:
              value >= axis.from - 1e-6 * Math.abs(axis.from) - 1e-9 &&
              value <= axis.to + 1e-6 * Math.abs(axis.to) + 1e-9,
            value,
          }).toMatchObject({ ok: true });
    }
  });

  test("refuses what cannot be taken with a sentence, whatever stands in a cell", () => {
    const strange: (Cell | Range)[] = ["?", -1, 0, null, true, 1e308, "", [["?"], [1]], []];
    for (const one of strange)
      for (let place = 0; place < Math.min(list.length, 6); place++) {
        const cells: Argument[] = [...argumentsOf(examples[0]?.cells ?? [])];
        cells[place] = one;
        for (const row of call(definition, cells))
          for (const cell of row) {
            if (cell instanceof Error) expect(cell.message).toMatch(/^[^\n]{5,}[.!?]$/);
            else
              expect(
                typeof cell === "number" ? Number.isFinite(cell) : ["string", "boolean"].includes(typeof cell),
              ).toBe(true);
          }
      }
  });

  test("one bad row leaves the others standing", () => {
    const first = list.findIndex(([, { spread, unit, repeating }]) => spread === "row" && unit !== "" && !repeating);
    const example = examples[0];
    const good = example?.cells[first];
    if (definition.answers === "rows" || first < 0 || !example || good === undefined || isRange(good)) return;
    const cells: Argument[] = [...argumentsOf(example.cells)];
    cells[first] = [[good], ["x"], [good]];
    const rows = call(definition, cells);
    expect(rows).toHaveLength(3);
    expect(rows[1]?.every((cell) => cell instanceof Error)).toBe(true);
    expect(rows[2]).toEqual(rows[0]);
    expect(rows[0]).toEqual(call(definition, argumentsOf(example.cells))[0]);
  });
});
