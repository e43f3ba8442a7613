import { NoAnswer } from "../metrology/no-answer";
import { say } from "../metrology/say";
import type { Source } from "../metrology/source";
import { BadInput } from "./bad-input";
import { callRow } from "./call";
import { type Argument, type Cell, isRange, sayCell, sayShape, sayText } from "./cells";
import type { AnyDefinition, Result } from "./define";
import { type Parameter, sheetName } from "./parameter";
import type { Plot } from "./plot";
import type { Step } from "./step";

/** One input as an explanation shows it. */
interface Input {
  readonly name: string;
  readonly unit: string;
  readonly meaning: string;
  /** "51 A", "left out: cold", "12 rows × 1 column, here 51 A". */
  readonly shown: string;
  /** Its place in the formula, so that a host can say where it came from. */
  readonly place: number;
}

/** Everything a person is told of one call: shown by the pane, by EXPLAIN and by the terminal. */
export interface Explained {
  readonly name: string;
  readonly summary: string;
  readonly inputs: readonly Input[];
  /** Which row of how many is explained (from 0). */
  readonly row: number;
  readonly of: number;
  readonly steps: readonly Step[];
  readonly results: readonly (Result & { readonly shown: string })[];
  readonly answer: string;
  readonly cautions: readonly string[];
  readonly sources: readonly Source[];
  readonly plot?: Plot;
  /** Instead of an answer. */
  readonly refusal?: { readonly code: "#VALUE!" | "#N/A"; readonly sentence: string };
}

/** Explains one row of a call. Never throws but on a defect: a refusal is explained as one. */
export const explained = (definition: AnyDefinition, args: readonly Argument[], row = 0): Explained => {
  const frame = {
    name: definition.name,
    summary: definition.summary,
    inputs: inputsOf(definition, args, row),
    row,
    of: 1,
    steps: [],
    results: [],
    cautions: definition.cautions,
    sources: definition.sources,
  };
  try {
    const called = callRow(definition, args, row);
    if (!called) return { ...frame, answer: "The row is blank, so the answer is blank." };
    const { given, rows, of } = called;
    const answer = rows[0] ?? [];
    const account = definition.explain(given, answer, rows);
    return {
      ...frame,
      of,
      steps: account.steps,
      results: definition.results.map((result, i) => ({ ...result, shown: say(answer[i] ?? "", result.unit) })),
      answer: account.answer,
      cautions: [...(account.cautions ?? []), ...definition.cautions],
      sources: account.sources ?? definition.sources,
      plot: definition.plot?.(given, answer, rows),
    };
  } catch (thrown) {
    if (thrown instanceof BadInput)
      return { ...frame, answer: thrown.message, refusal: { code: "#VALUE!", sentence: thrown.message } };
    if (thrown instanceof NoAnswer)
      return { ...frame, answer: thrown.message, refusal: { code: "#N/A", sentence: thrown.message } };
    throw thrown;
  }
};

const inputsOf = (definition: AnyDefinition, args: readonly Argument[], row: number): Input[] =>
  Object.entries(definition.parameters as Record<string, Parameter>).map(([key, parameter], place) => ({
    name: sheetName(key),
    unit: parameter.unit,
    meaning: parameter.meaning,
    shown: parameter.repeating ? counted(Math.max(0, args.length - place)) : shownArgument(parameter, args[place], row),
    place,
  }));

const shownArgument = (parameter: Parameter, argument: Argument, row: number): string => {
  if (argument === undefined) return parameter.otherwise === undefined ? "missing" : `left out: ${parameter.otherwise}`;
  const cellShown = (cell: Cell): string =>
    typeof cell === "number" ? say(cell, parameter.unit, 6) : typeof cell === "string" ? sayText(cell) : sayCell(cell);
  if (!isRange(argument)) return cellShown(argument);
  const cells = argument.length === 1 ? (argument[0] ?? []) : argument.map((cells) => cells[0] ?? null);
  if (argument.length === 1 && cells.length === 1) return cellShown(cells[0] ?? null);
  if (parameter.spread !== "row" || (argument.length > 1 && (argument[0]?.length ?? 0) > 1))
    return `${sayShape(argument)}`;
  return `${cellShown(cells[row] ?? null)} (row ${row + 1} of ${cells.length})`;
};

const counted = (n: number): string => `${n} ${n === 1 ? "argument" : "arguments"}`;
