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
            {tex ? <Mathematics tex={tex} plain={plain} /> : plain && <p class="pane-plain">{tied(plain)}</p>}
          </li>
        ))}
      </ol>
    </section>
  );
