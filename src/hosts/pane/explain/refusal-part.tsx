import type { Explained } from "../../../definition/explained";
import { type Parameter, sheetName } from "../../../definition/parameter";
import { introduced } from "../../../derived/wanted";
import type { ResolvedCall } from "./resolved";
import { tied } from "./tied";

/** A refusal: what is wrong, in which argument, and what that argument would take. */
export const RefusalPart = ({ call, refusal: { code, sentence } }: Props) => {
  // A question that the sources do not answer was asked with arguments that are taken.
  const about = code === "#VALUE!" ? argumentOf(call, sentence) : undefined;
  return (
    <section class="pane-part pane-refusal" aria-label="Refusal">
      <h3 class="pane-heading">
        <span class="pane-code">{code}</span>{" "}
        {code === "#N/A" ? "A fair question that the sources do not answer" : "This cannot be taken"}
      </h3>
      <p class="pane-answer-words">{tied(sentence)}</p>
      {about && (
        <p class="pane-would">
          <strong>{about.name}</strong>: {tied(untold(about.parameter, sentence))}
        </p>
      )}
    </section>
  );
};

/** What the sentence has not said yet: the words that are known stand in it already. */
const untold = (parameter: Parameter, sentence: string): string =>
  parameter.choices?.every((choice) => sentence.includes(`"${choice}"`))
    ? `${parameter.meaning}.`
    : introduced(parameter);

interface Props {
  readonly call: ResolvedCall;
  readonly refusal: NonNullable<Explained["refusal"]>;
}

/** Refusals begin with the name of the argument they are about ("rating: …", "current is blank"). The longest name wins: "current error" is not "current". */
export const argumentOf = (
  { definition }: Pick<ResolvedCall, "definition">,
  sentence: string,
): { name: string; parameter: Parameter; place: number } | undefined =>
  Object.entries(definition.parameters as Record<string, Parameter>)
    .map(([key, parameter], place) => ({ name: sheetName(key), parameter, place }))
    .filter(({ name }) => new RegExp(`^${name}(:|,| is\\b)`).test(sentence))
    .sort((a, b) => b.name.length - a.name.length)[0];
