import { call as callOf } from "../../../definition/call";
import type { Result } from "../../../definition/define";
import { type Explained, explained } from "../../../definition/explained";
import { say } from "../../../metrology/say";
import type { ResolvedCall } from "./resolved";

/**
 * One row of a call explained. Where an argument is not known there are no steps and no results, only what is known.
 * Throws only on a defect.
 */
export const told = (call: ResolvedCall, row: number): Explained => {
  const whole = explained(call.definition, call.args, row);
  const missing = call.origins.flatMap(({ unknown }, place) => (unknown ? [{ unknown, place }] : []));
  if (missing.length === 0) return call.answerRow ? { ...whole, results: resultsOf(call, call.answerRow) } : whole;
  const names = missing.map(({ place }) => whole.inputs[place]?.name ?? "an argument");
  return {
    ...whole,
    inputs: whole.inputs.map((input) => {
      const unknown = call.origins[input.place]?.unknown;
      return unknown ? { ...input, shown: unknown } : input;
    }),
    steps: [],
    results: [],
    plot: undefined,
    refusal: undefined,
    cautions: call.definition.cautions,
    sources: call.definition.sources,
    answer: `The steps cannot be shown: the formula works out ${names.join(" and ")} on the way.`,
  };
};

/** The results in a later row of an answer that has many. */
const resultsOf = ({ definition, args }: ResolvedCall, answerRow: number): Explained["results"] => {
  const row = callOf(definition, args)[answerRow] ?? [];
  return definition.results.map((result: Result, i: number) => {
    const value = row[i] ?? "";
    return { ...result, shown: value instanceof Error ? value.message : say(value, result.unit) };
  });
};
