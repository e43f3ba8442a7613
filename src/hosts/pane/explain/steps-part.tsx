import type { Step } from "../../../definition/step";
import { Mathematics } from "./mathematics";
import { tied } from "./tied";

/** The way to the answer with the numbers put in. */
export const StepsPart = ({ steps }: { steps: readonly Step[] }) =>
  steps.length === 0 ? null : (
    <section class="pane-part" aria-label="Step by step">
      <h3 class="pane-heading">Step by step</h3>
      <ol class="pane-steps">
        {steps.map(({ sentence, tex, plain }) => (
          <li key={sentence} class="pane-step">
            <p class="pane-sentence">{tied(sentence)}</p>
            {tex ? <Mathematics tex={tex} plain={plain} /> : plain && <PlainLine text={plain} />}
          </li>
        ))}
      </ol>
    </section>
  );

/** What is said without mathematics; a list of several things goes a line each. */
const PlainLine = ({ text }: { text: string }) => {
  const parts = text.split("; ");
  if (parts.length < 3) return <p class="pane-plain">{tied(text)}</p>;
  return (
    <ul class="pane-plain">
      {parts.map((part, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same part may stand twice, and its place tells them apart.
        <li key={i}>{tied(part)}</li>
      ))}
    </ul>
  );
};
