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
    {story.tells !== "nothing selected" && story.selection.formula && (
      <code class="pane-formula">
        <Broken text={story.selection.formula} after={/(?<=[,;(])/} />
      </code>
    )}
  </header>
);

interface Props {
  readonly story: Story;
  readonly onPrint: () => void;
  readonly onRecalculate: () => void;
}
