import fc from "fast-check";
import { type Argument, type Cell, isRange, type Range } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import type { Parameter } from "../../src/definition/parameter";
import { catalogue } from "../../src/functions";
import { catalogued } from "./catalogued";
import { chance, die, either, oneOf } from "./dice";
import { parametersOf, Question } from "./question";
import { type Row, relations } from "./related";
import { sceneDice, sceneOf } from "./scene";
import { type Oddity, oddity, spoiled } from "./spoiled";
import { anyTaken, usualOf } from "./usual";

/** What a question is thrown with. */
interface Thrown {
  readonly rows: readonly (readonly number[])[];
  /** Cells, columns, rows across, or columns beside cells. */
  readonly form: number;
  /** For each parameter whether it is given, and whether it is one cell where others are columns. */
  readonly given: readonly number[];
  readonly single: readonly number[];
  readonly trailing: number;
  /** By a chance of `onlyBySchema`: what the schemas take, whether it makes sense or not. */
  readonly sense: number;
  readonly oddities: readonly Oddity[];
}

const onlyBySchema = 0.08;
const leftOut = 0.45;

/** Lists taken whole need as many rows as make sense. */
const rowsOf: Readonly<Record<string, readonly [least: number, most: number]>> = {
  "THERMAL.FIT": [5, 12],
  "THERMAL.PROFILE": [2, 8],
  "CONTACT.SPREAD": [2, 4],
  "METER.REPEATS": [2, 7],
};

/** What may be left out, and yet is wanted beside the rest. */
const wanted: readonly string[] = ["THERMAL.FIT.outcomes", "THERMAL.FIT.rating", "METER.CONFORMS.upper"];

const form = oneOf("cells", "cells", "cells", "columns", "columns", "across", "beside cells");

/** Questions about one function, most of them answerable; `plain` ones ask of single cells, without any slip. */
const questionsOf = (definition: AnyDefinition, plain = false): fc.Arbitrary<Question> => {
  const parameters = parametersOf(definition);
  const many = (length: number) => fc.array(die, { minLength: length, maxLength: length });
  const takesLists = parameters.some(([, { spread }]) => spread === "column" || spread === "whole");
  const [minLength, maxLength] = rowsOf[definition.name] ?? (takesLists ? [1, 7] : [1, plain ? 1 : 6]);
  const nothing = fc.constant(0);
  return fc
    .record({
      rows: fc.array(many(sceneDice + parameters.length), { minLength, maxLength, size: "max" }),
      form: plain ? nothing : die,
      given: many(parameters.length),
      single: plain ? fc.constant([]) : many(parameters.length),
      trailing: plain ? nothing : die,
      sense: plain ? nothing : die,
      oddities: plain ? fc.constant([]) : slips,
    })
    .map((thrown) => spoiled(questionOf(definition, thrown), thrown.oddities));
};

const slips: fc.Arbitrary<readonly Oddity[]> = fc.oneof(
  { weight: 7, arbitrary: fc.constant([]) },
  { weight: 3, arbitrary: fc.array(oddity, { minLength: 1, maxLength: 2 }) },
);

const questionOf = (definition: AnyDefinition, thrown: Thrown): Question => {
  const rows = cellsOf(definition, thrown);
  const shape = form(thrown.form);
  const across = shape === "across";
  const args = parametersOf(definition).map(([key, parameter], place): Argument => {
    const [first, ...others] = rows.map((row) => row[key]);
    const mayGo = parameter.otherwise !== undefined && !wanted.includes(`${definition.name}.${key}`);
    if (first === undefined || (mayGo && chance(thrown.given[place] ?? 0, leftOut))) return undefined;
    const isList = parameter.spread === "column" || parameter.spread === "whole";
    if (isRange(first)) return first;
    const asOneCell = chance(thrown.single[place] ?? 0, isList ? 0.06 : shape === "beside cells" ? 0.5 : 0);
    if (asOneCell || others.length === 0) return first;
    if (!isList && (shape === "cells" || definition.answers === "rows")) return first;
    return lane([first, ...others.map(inLane)], across);
  });
  return new Question(definition, chance(thrown.trailing, 0.7) ? trimmed(args) : args);
};

/** A row's cell in a column: what is left out there is blank, and a block has no place. */
const inLane = (argument: Argument): Cell => (argument === undefined ? null : isRange(argument) ? "C" : argument);

const lane = (cells: readonly Cell[], across: boolean): Range => (across ? [cells] : cells.map((cell) => [cell]));

const trimmed = (args: readonly Argument[]): readonly Argument[] => {
  const given = args.flatMap((argument, place) => (argument === undefined ? [] : [place + 1]));
  return args.slice(0, given.at(-1) ?? 0);
};

const cellsOf = (definition: AnyDefinition, { rows, sense }: Thrown): Record<string, Argument>[] => {
  const parameters = parametersOf(definition);
  const made = rows.map((all) => {
    const scene = sceneOf(all.slice(0, sceneDice));
    const dice = Object.fromEntries(parameters.map(([key], place) => [key, all[sceneDice + place] ?? 0]));
    const cells = Object.fromEntries(
      parameters.map(([key, parameter]) => [key, thrower(definition, key, parameter, sense)(dice[key] ?? 0, scene)]),
    );
    return { scene, dice, cells };
  });
  const relation = relations[definition.name];
  const [first] = made;
  if (!relation || !first || chance(sense, onlyBySchema)) return made.map(({ cells }) => cells);
  const agreeing = { ...first, cells: { ...first.cells, ...relation({ ...first, index: 0, first }) } };
  return made.map(({ cells, dice }, index) => ({
    ...cells,
    ...relation({ cells, dice, index, first: agreeing } satisfies Row),
  }));
};

const thrower = ({ name }: AnyDefinition, key: string, parameter: Parameter, sense: number) =>
  chance(sense, onlyBySchema) ? anyTaken(parameter) : usualOf(name, key, parameter);

const direct = new Map(catalogue.slice(0, -1).map((definition) => [definition.name, questionsOf(definition)]));

/** EXPLAIN is asked about every other function. */
const explain = catalogue.at(-1) as AnyDefinition;
const nameAs = either<string>(oneOf("", "BIMETAL.", "bimetal."), oneOf(" ", "", ""));
const explanations = fc
  .tuple(fc.oneof(...direct.values()), die)
  .map(
    ([{ definition, args }, how]) =>
      new Question(explain, [`${nameAs(how)}${how < 0.3 ? definition.name.toLowerCase() : definition.name}`, ...args]),
  );

/** Questions by the name of the function. */
export const questions: ReadonlyMap<string, fc.Arbitrary<Question>> = new Map([
  ...direct,
  [explain.name, explanations],
]);

/** Questions about any function. */
export const anyQuestion: fc.Arbitrary<Question> = fc.oneof(...questions.values());

/** Questions of single cells that make sense, for what must hold between two answers. */
export const plainQuestions = (name: string): fc.Arbitrary<Question> => questionsOf(catalogued(name), true);
