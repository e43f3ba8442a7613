import { NoAnswer } from "../metrology/no-answer";
import { BadInput, type Refusal } from "./bad-input";
import type { Answer, Argument } from "./cells";
import type { AnyDefinition, Row } from "./define";
import { fill, type Inputs, readInputs } from "./inputs";

/** What a call gives: rows of answers; a refused row holds its refusal in each of its cells. */
export type Called = readonly (readonly (Answer | Refusal)[])[];

/**
 * The one road from the cells of a formula to an answer. `undefined` and trailing arguments left out are the same.
 * Bad rows hold their refusal and leave the others alone. Throws only on a defect.
 */
export const call = (definition: AnyDefinition, args: readonly Argument[]): Called => {
  try {
    const inputs = readInputs(definition, args);
    if (definition.answers === "rows") return calculateRows(definition, inputs);
    const rows = answerRows(definition, inputs);
    return inputs.across ? turned(rows) : rows;
  } catch (thrown) {
    return [refused(definition, thrown)];
  }
};

/** The checked inputs of row `index` of a call and its answer, for an explanation. Throws what the row is refused with. */
export const callRow = (
  definition: AnyDefinition,
  args: readonly Argument[],
  index: number,
): { given: Record<string, unknown>; rows: readonly Row[]; of: number } | undefined => {
  const inputs = readInputs(definition, args);
  if (!fill(inputs, index)) return undefined;
  const answer = definition.calculate(inputs.given);
  const rows = definition.answers === "rows" ? (answer as readonly Row[]) : [answer as Row];
  return { given: { ...inputs.given }, rows, of: definition.answers === "rows" ? 1 : inputs.rows };
};

/** The long columns' loop: nothing is made for a row but its answers. */
const answerRows = (definition: AnyDefinition, inputs: Inputs): (readonly (Answer | Refusal)[])[] => {
  const rows: (readonly (Answer | Refusal)[])[] = new Array(inputs.rows);
  const blank = definition.results.map(() => "");
  for (let row = 0; row < inputs.rows; row++) {
    try {
      rows[row] = fill(inputs, row) ? (definition.calculate(inputs.given) as Row) : blank;
    } catch (thrown) {
      rows[row] = refused(definition, thrown);
    }
  }
  return rows;
};

const calculateRows = (definition: AnyDefinition, inputs: Inputs): Called =>
  definition.calculate(inputs.given) as readonly Row[];

const refused = (definition: AnyDefinition, thrown: unknown): readonly Refusal[] => {
  if (thrown instanceof BadInput || thrown instanceof NoAnswer) return definition.results.map(() => thrown);
  throw thrown;
};

const turned = <T>(rows: readonly (readonly T[])[]): T[][] =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] as T));
