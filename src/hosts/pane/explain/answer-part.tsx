import type { Explained } from "../../../definition/explained";
import { tied } from "./tied";

/** The answer in words, then each result with its unit; the one that the selected cell shows is marked. */
export const AnswerPart = ({ explained: { answer, results }, answerRow, column }: Props) => (
  <section class={results.length > 0 ? "pane-part pane-answer" : "pane-part pane-note"} aria-label="Answer">
    <p class="pane-answer-words">{tied(answer)}</p>
    {answerRow !== undefined && <p class="pane-answer-row">Row {answerRow + 1} of the answer</p>}
    {results.length > 0 && (
      <dl class="pane-results">
        {results.map(({ name, meaning, shown }, i) => (
          <div key={name} class={classOf(shown, i === column && results.length > 1)}>
            <dt class="pane-result-name">
              {name}
              {i === column && results.length > 1 && <span class="pane-here"> (this cell)</span>}
            </dt>
            <dd class={classOfShown(shown)}>{shown === "" ? "blank" : tied(shown)}</dd>
            <dd class="pane-result-meaning">{tied(meaning)}</dd>
          </div>
        ))}
      </dl>
    )}
  </section>
);

const classOf = (shown: string, isHere: boolean): string => {
  const kind = shown.length > 120 ? " pane-result-passage" : shown.length > 28 ? " pane-result-sentence" : "";
  return `pane-result${kind}${isHere ? " pane-result-here" : ""}`;
};

const classOfShown = (shown: string): string => {
  if (shown === "") return "pane-result-blank";
  return shown.length > 16 ? "pane-result-words" : "pane-result-value";
};

interface Props {
  readonly explained: Explained;
  /** Of an answer in many rows: the one that is shown. */
  readonly answerRow?: number;
  readonly column?: number;
}
