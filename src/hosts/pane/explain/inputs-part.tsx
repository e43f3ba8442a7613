import type { Explained } from "../../../definition/explained";
import { OriginText } from "./origin-text";
import { argumentOf } from "./refusal-part";
import type { ResolvedCall } from "./resolved";
import { tied } from "./tied";

/** What the function was given: each input with its value, and where that came from. */
export const InputsPart = ({ call, explained: { inputs, refusal }, row, onGo }: Props) => {
  const refused = refusal && argumentOf(call, refusal.sentence)?.place;
  const given = inputs.filter(({ place }) => call.origins[place] && call.origins[place]?.written.as !== "left out");
  const leftOut = inputs.filter((input) => !given.includes(input));
  if (inputs.length === 0) return null;
  return (
    <section class="pane-part" aria-label="Given">
      <h3 class="pane-heading">Given</h3>
      <dl class="pane-inputs">
        {given.map(({ name, meaning, shown, place }) => (
          <div key={name} class={place === refused ? "pane-input pane-input-refused" : "pane-input"}>
            <dt class="pane-input-name">{name}</dt>
            <dd class="pane-input-given">
              <span class="pane-input-value">{tied(shown)}</span>{" "}
              <span class="pane-input-from">
                <OriginText call={call} place={place} row={row} onGo={onGo} />
              </span>
            </dd>
            <dd class="pane-input-meaning">{tied(meaning)}</dd>
          </div>
        ))}
      </dl>
      {leftOut.length > 0 && (
        <ul class="pane-left-out">
          {leftOut.map(({ name, shown }) => (
            <li key={name}>
              <span class="pane-input-name">{name}</span> {shown}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

interface Props {
  readonly call: ResolvedCall;
  readonly explained: Explained;
  readonly row: number;
  readonly onGo: (address: string) => void;
}
