import type { NoAnswer } from "../metrology/no-answer";

/**
 * A cell that cannot be taken: text for a number, a negative current, a word nobody knows. Shown as #VALUE!.
 * The message is one sentence that names the argument, what is wanted and what was given.
 */
export class BadInput extends Error {
  override readonly name = "BadInput";
}

/** The two ways a question may go without an answer. Anything else thrown is a defect. */
export type Refusal = BadInput | NoAnswer;
