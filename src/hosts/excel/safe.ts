import { BadInput, type Refusal } from "../../definition/bad-input";
import type { Called } from "../../definition/call";
import type { Answer } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import { NoAnswer } from "../../metrology/no-answer";

/** What may reach Excel: nothing else survives the way there unharmed. */
export type Shown = number | string | boolean | CustomFunctions.Error;

/** Characters a cell holds (Excel specifications and limits). */
const longestText = 32_767;

/**
 * The one gate between our answers and Excel. Excel's runtime turns NaN, an infinity, null and undefined inside a matrix into 0,
 * and a value that JSON cannot write keeps every cell of the batch at #BUSY!; so none of them passes.
 * Whatever is thrown or given that no sheet function should, is shown as a defect in its own cells and costs no other cell its answer.
 */
export const safely = (definition: AnyDefinition, answer: () => Called): Shown[][] => {
  try {
    const rows = answer();
    const width = rows.reduce((widest, row) => Math.max(widest, row.length), 0);
    if (width === 0) return refusedWhole(definition, "gave no cells");
    return rows.map((row) =>
      Array.from({ length: width }, (_, column) =>
        column < row.length ? shown(definition, row[column]) : defect(definition, "gave rows of different lengths"),
      ),
    );
  } catch (thrown) {
    return refusedWhole(definition, `failed: ${thrown instanceof Error ? thrown.message : thrown}`);
  }
};

const refusedWhole = (definition: AnyDefinition, what: string): Shown[][] => [
  Array.from({ length: Math.max(1, definition.results.length) }, () => defect(definition, what)),
];

const shown = (definition: AnyDefinition, answer: Answer | Refusal | null | undefined): Shown => {
  if (answer instanceof BadInput)
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, answer.message);
  if (answer instanceof NoAnswer)
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, answer.message);
  if (answer === null || answer === undefined) return "";
  if (typeof answer === "boolean") return answer;
  if (typeof answer === "number")
    return Number.isFinite(answer) ? answer : defect(definition, `gave ${answer} for a number`);
  if (typeof answer !== "string")
    return defect(definition, `gave a value of type ${typeof answer}, which no cell can hold`);
  return answer.length <= longestText
    ? answer
    : defect(definition, `gave a text of ${answer.length} characters, more than a cell holds`);
};

const defect = ({ name }: AnyDefinition, what: string): CustomFunctions.Error =>
  new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, `defect: ${name} ${what}`);
