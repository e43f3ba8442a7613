import { cellOf, sayAddress } from "./address";
import { Broken } from "./broken";
import type { Story } from "./explain/story";

/** Which cell is told, its formula, and what can be done with it. */
export const CellHeading = ({ story, onPrint, onRecalculate }: Props) => (
  <header class="pane-header">
    <div class="pane-header-line">
      <h1 class="pane-title">
        {story.tells === "nothing selected" ? (
          "No cell selected"
        ) : (
          <>
            <span class="pane-on-screen">
              Cell {cellOf(story.selection.address)}
              {story.tells === "calls" && story.below && ", above the selected one"}
            </span>
            <span class="pane-on-paper">Cell {sayAddress(story.selection.address)}</span>
          </>
        )}
      </h1>
      <div class="pane-actions">
        <button
          type="button"
          class="pane-step-button"
          title="Calculate the whole workbook anew"
          onClick={onRecalculate}
        >
          Recalculate
        </button>
        {story.tells === "calls" && (
          <button type="button" class="pane-step-button" title="This explanation on one page" onClick={onPrint}>
            Print
          </button>
        )}
      </div>
    </div>
    {story.tells !== "nothing selected" && story.selection.formula && <Formula text={story.selection.formula} />}
  </header>
);

/** A long one is scrolled, by keyboard too, so that its answer stays in sight. */
const Formula = ({ text }: { text: string }) => {
  const broken = <Broken text={text} after={/(?<=[,;(])/} />;
  if (text.length < longFormula) return <code class="pane-formula">{broken}</code>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard.
    <section class="pane-formula pane-formula-long" tabIndex={0} aria-label="The formula">
      <code>{broken}</code>
    </section>
  );
};

const longFormula = 240;

interface Props {
  readonly story: Story;
  readonly onPrint: () => void;
  readonly onRecalculate: () => void;
}
