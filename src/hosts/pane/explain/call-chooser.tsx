import type { ResolvedCall } from "./resolved";

/** Several of our functions in one formula: which of them is told. */
export const CallChooser = ({ calls, chosen, onChoose }: Props) => (
  <fieldset class="pane-chooser">
    <legend class="pane-label">{calls.length} of our functions stand in this formula</legend>
    {calls.map(({ definition, text }, i) => (
      <button
        // biome-ignore lint/suspicious/noArrayIndexKey: the same call may stand twice in a formula, and its place tells them apart.
        key={`${i} ${text}`}
        type="button"
        class="pane-choice"
        aria-pressed={i === chosen}
        title={text}
        onClick={() => onChoose(i)}
      >
        {i + 1}. {definition.name}
      </button>
    ))}
  </fieldset>
);

interface Props {
  readonly calls: readonly ResolvedCall[];
  readonly chosen: number;
  readonly onChoose: (chosen: number) => void;
}
