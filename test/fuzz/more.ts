import { conductorNamed, conductorsIn } from "../../src/contact/conductor";
import type { Called } from "../../src/definition/call";
import { type Answer, type Argument, isRange } from "../../src/definition/cells";
import { linear, logarithmic, oneOf, typed } from "./dice";
import type { Law } from "./laws";
import { parametersOf, type Question } from "./question";

/** The question with more of one argument, in a list of each of its cells; undefined where there is nothing to raise. */
export const withMore = (question: Question, key: string, die: number): Question | undefined => {
  const place = parametersOf(question.definition).findIndex(([name]) => name === key);
  const more = moreOf(key, question.args[place], die);
  return more === undefined ? undefined : question.with(question.args.map((one, at) => (at === place ? more : one)));
};

const moreOf = (key: string, given: Argument, die: number): Argument => {
  if (typeof given === "number") return largerThan(key, given, die);
  if (key === "size" && typeof given === "string") return thickerThan(given, die);
  if (!isRange(given) || !given.flat().every((cell) => typeof cell === "number")) return undefined;
  return given.map((row) => row.map((cell) => largerThan(key, cell as number, die)));
};

const largerThan = (key: string, given: number, die: number): number => {
  const isWhole = ["turns", "circuits", "poles"].includes(key);
  const isDegrees = ["ambient", "room", "temperature", "startTemperature"].includes(key);
  const more = isDegrees || given <= 0 ? given + linear(0.01, 20)(die) : typed(given * logarithmic(1.001, 4)(die));
  return isWhole ? Math.ceil(more) : more;
};

/** Within one series: the two continents' tables round their resistances differently. */
const thickerThan = (size: string, die: number): string | undefined => {
  const conductor = conductorNamed(size);
  const series = (["AWG", "kcmil", "mm²"] as const).find((unit) => conductor?.name.endsWith(unit));
  if (!conductor || !series) return undefined;
  const thicker = conductorsIn(series).filter((one) => one.areaSquareMillimetres > conductor.areaSquareMillimetres);
  return thicker.length > 0 ? oneOf(...thicker.map(({ name }) => name))(die) : undefined;
};

const forEver = ["holds", "no limit", "tripped"];

/** A result as it is compared: what is for ever is larger than any number. undefined: it is not known. */
export const comparable = (called: Called, law: Pick<Law, "row" | "words">, result: number): number | undefined => {
  const cell = (law.row === "last" ? called.at(-1) : called[0])?.[result] as Answer;
  if (typeof cell === "number") return cell;
  return forEver.includes(String(cell)) ? Infinity : law.words?.(String(cell));
};
