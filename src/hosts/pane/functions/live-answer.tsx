import type { Explained } from "../../../definition/explained";
import { AnswerPart } from "../explain/answer-part";
import { tied } from "../explain/tied";

/** The answer to what stands in the form so far. */
export const LiveAnswer = ({ answer }: { answer: Explained | string | undefined }) => (
  <div role="status">
    {answer === undefined ? null : typeof answer === "string" ? (
      <p class="pane-part pane-note">{answer}</p>
    ) : answer.refusal ? (
      <p class="pane-part pane-note">{tied(answer.refusal.sentence)}</p>
    ) : (
      <AnswerPart explained={answer} />
    )}
  </div>
);
