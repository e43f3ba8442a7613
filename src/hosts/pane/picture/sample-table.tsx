import type { Plot } from "../../../definition/plot";
import { say } from "../../../metrology/say";
import { tied } from "../explain/tied";
import type { Reading } from "./samples";

/** The numbers a picture is drawn from, and its points. */
export const SampleTable = ({ plot, columns, readings }: Props) => {
  const hasPoints = readings.some(({ points }) => points.length > 0);
  return (
    <details class="pane-numbers">
      <summary class="pane-summary">The same numbers in a table</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard. */}
      <section class="pane-scroll" tabIndex={0} aria-label={`${plot.title}: the numbers`}>
        <table class="pane-table">
          <thead>
            <tr>
              <th class="pane-th" scope="col">
                {plot.x.quantity}
              </th>
              {columns.map((name) => (
                <th key={name} class="pane-th" scope="col">
                  {name}
                </th>
              ))}
              {hasPoints && (
                <th class="pane-th" scope="col">
                  points
                </th>
              )}
            </tr>
          </thead>
          <tbody>
            {readings.map(({ x, texts, points }) => (
              <tr key={x}>
                <th class="pane-td" scope="row">
                  {tied(say(x, plot.x.unit))}
                </th>
                {columns.map((name, i) => (
                  <td key={name} class="pane-td">
                    {tied(texts[i] ?? "")}
                  </td>
                ))}
                {hasPoints && <td class="pane-td">{points.join("; ")}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
};

interface Props {
  readonly plot: Plot;
  readonly columns: readonly string[];
  readonly readings: readonly Reading[];
}
