import fc from "fast-check";
import { type Argument, type Cell, isRange, type Range } from "../../src/definition/cells";
import { die, either, oneOf } from "./dice";
import { parametersOf, type Question } from "./question";
import { blankCell, strangeCell } from "./strange";

/** A slip of the hand: where, in which row of a range, of what kind, and which one. */
export type Oddity = readonly [place: number, row: number, kind: number, which: number];

export const oddity: fc.Arbitrary<Oddity> = fc.tuple(die, die, die, die);

const kind = oneOf("cell", "cell", "cell", "cell", "cell", "blank", "blank row", "shape", "left out", "too many");

/** Shapes that fit nothing, or something else. */
const shape: (die: number) => Argument = either<Argument>(
  oneOf<Range>([], [[]], [[null]], [[1]], [["x"]], [[null], [null]], [[0, 0]]),
  oneOf<Range>(
    [
      [1, 2],
      [3, 4],
    ],
    [[1, 2, 3]],
    [
      [1, 2, 3],
      [2, 1, 2],
    ],
    [["pickup", 20, 1, 19, 21]],
    [[1], [2], [3], [4], [5], [6], [7], [8], [9]],
    [["C"], ["D"], [null]],
  ),
);

/** A question with its slips in it. */
export const spoiled = (question: Question, oddities: readonly Oddity[]): Question => oddities.reduce(spoil, question);

const spoil = (question: Question, [at, row, how, which]: Oddity): Question => {
  const parameters = parametersOf(question.definition);
  const args = Array.from({ length: Math.max(1, question.args.length) }, (_, place) => question.args[place]);
  const place = Math.floor(at * args.length);
  const parameter = parameters[place]?.[1];
  const slip = kind(how);
  if (slip === "too many" || !parameter) return question.with([...filled(args, parameters.length), which]);
  if (slip === "blank row") return question.with(args.map((one) => atRow(one, row, blankCell(which), isRange(one))));
  if (slip === "left out") args[place] = undefined;
  else if (slip === "shape") args[place] = shape(which);
  else args[place] = atRow(args[place], row, slip === "blank" ? blankCell(which) : strangeCell(parameter)(which), true);
  return question.with(args);
};

const filled = (args: readonly Argument[], length: number): readonly Argument[] =>
  Array.from({ length: Math.max(length, args.length) }, (_, place) => args[place]);

/** One cell of a range put in place of another; a single cell is put as it is. */
const atRow = (argument: Argument, row: number, cell: Cell, also: boolean): Argument => {
  if (!also) return argument;
  if (!isRange(argument)) return cell;
  const cells = argument.reduce((count, { length }) => count + length, 0);
  let left = Math.floor(row * cells);
  return argument.map((line) => line.map((old) => (left-- === 0 ? cell : old)));
};
