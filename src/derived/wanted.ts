import * as z from "zod/mini";
import { limitsOf } from "../definition/limits";
import type { Parameter } from "../definition/parameter";

/** What an argument would take, in words: "a number in A, more than 0", "one of "B", "C", "D"". "" where its meaning says it all. */
export const wanted = (parameter: Parameter): string =>
  [taken(parameter), parameter.otherwise === undefined ? "" : `left out: ${parameter.otherwise}`]
    .filter(Boolean)
    .join("; ");

/** An argument in a sentence or two: what it is and what it takes. */
export const introduced = (parameter: Parameter): string => {
  const sentences = [parameter.meaning.replace(/\.$/, "")];
  if (taken(parameter)) sentences.push(`It takes ${wanted(parameter)}`);
  else if (parameter.otherwise !== undefined) sentences.push(`Left out: ${parameter.otherwise}`);
  return `${sentences.join(". ")}.`;
};

const taken = (parameter: Parameter): string => {
  const { choices, schema, unit } = parameter;
  if (choices) return `one of ${choices.map((word) => `"${word}"`).join(", ")}`;
  if (!(schema instanceof z.ZodMiniNumber)) return "";
  const number = `a ${limitsOf(schema).whole ? "whole number" : "number"}${unit ? ` in ${unit}` : ""}`;
  const limits = limited(parameter);
  return limits ? `${number}, ${limits}` : number;
};

/** The limits of a number in words, "more than 0 and at most 60"; "" where there are none. A most that no bench comes near only catches slips of the keyboard. */
export const limited = ({ schema }: Parameter): string => {
  if (!(schema instanceof z.ZodMiniNumber)) return "";
  const { minimum, exclusiveMinimum, maximum, exclusiveMaximum } = limitsOf(schema);
  return [
    exclusiveMinimum > -Infinity && `more than ${exclusiveMinimum}`,
    minimum > -Number.MAX_VALUE && `at least ${minimum}`,
    exclusiveMaximum < Infinity && `less than ${exclusiveMaximum}`,
    maximum < beyondAnyBench && `at most ${maximum}`,
  ]
    .filter(Boolean)
    .join(" and ");
};

const beyondAnyBench = 1e6;
