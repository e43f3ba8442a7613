import fc from "fast-check";
import { type Argument, type Cell, isRange } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import type { Parameter } from "../../src/definition/parameter";
import { formula } from "./formula";

/** One call of a function: what a formula in a cell would ask. It shows itself as that formula. */
export class Question {
  constructor(
    readonly definition: AnyDefinition,
    readonly args: readonly Argument[],
  ) {}

  /** The same call with other arguments. */
  with(args: readonly Argument[]): Question {
    return new Question(this.definition, args);
  }

  [fc.toStringMethod](): string {
    return formula(this.definition, this.args);
  }
}

export const parametersOf = (definition: AnyDefinition): readonly [string, Parameter][] =>
  Object.entries(definition.parameters as Record<string, Parameter>);

/** The arguments that change from row to row of a question, by their places, as lists of cells. */
export interface Lanes {
  readonly cells: ReadonlyMap<number, readonly Cell[]>;
  readonly rows: number;
  readonly across: boolean;
}

/** undefined where the arguments do not fit each other, or one is refused by its shape: then the whole call is. */
export const lanesOf = ({ definition, args }: Question): Lanes | undefined => {
  const cells = new Map<number, readonly Cell[]>();
  const shapes = new Set<string>();
  for (const [place, [key, parameter]] of parametersOf(definition).entries()) {
    const argument = args[place];
    if (!isRange(argument) || parameter.repeating) continue;
    const [rows, columns] = [argument.length, argument[0]?.length ?? 0];
    if (rows * columns === 0) return undefined;
    if (isReadWhole(parameter, argument, key)) continue;
    if (rows * columns === 1 || parameter.spread === "whole" || parameter.spread === "raw") continue;
    shapes.add(`${rows} ${columns}`);
    if (parameter.spread === "row")
      cells.set(place, rows === 1 ? (argument[0] ?? []) : argument.map(([cell]) => cell as Cell));
  }
  const [shape = "1 1"] = shapes;
  const [rows = 1, columns = 1] = shape.split(" ").map(Number);
  if (shapes.size > 1 || (rows > 1 && columns > 1)) return undefined;
  return { cells, rows: cells.size === 0 ? 1 : rows * columns, across: rows === 1 && columns > 1 && cells.size > 0 };
};

const isReadWhole = (parameter: Parameter, range: Argument & readonly (readonly Cell[])[], name: string): boolean => {
  try {
    return parameter.readBlock?.(range, name) !== undefined;
  } catch {
    return true;
  }
};

/** A question with other rows in its lanes: `pick` names the rows to stand there, in that order. */
export const withRows = (question: Question, { cells, across }: Lanes, pick: readonly number[]): Question =>
  question.with(
    question.args.map((argument, place) => {
      const lane = cells.get(place);
      if (!lane) return argument;
      const picked = pick.map((row) => lane[row] as Cell);
      if (picked.length === 1) return picked[0];
      return across ? [picked] : picked.map((cell) => [cell]);
    }),
  );
