import { useState } from "preact/hooks";
import type { AnyDefinition } from "../../definition/define";
import { CellHeading } from "./cell-heading";
import { ExplainView } from "./explain/explain-view";
import { useStory } from "./explain/use-story";
import { FunctionsView } from "./functions/functions-view";
import type { Port } from "./port";
import { printPage } from "./print";
import { SheetsView } from "./sheets/sheets-view";
import { type View, ViewTabs } from "./views";

/** The pane beside the sheet. It keeps nothing and asks no one but its host. */
export const Pane = ({ port, catalogue, view, onView }: Props) => {
  const story = useStory(port, catalogue);
  const [said, setSaid] = useState("");
  const attempt = (work: () => void | Promise<void>, done = "") =>
    Promise.resolve()
      .then(work)
      .then(
        () => setSaid(done),
        (reason: unknown) => setSaid(reason instanceof Error ? reason.message : String(reason)),
      );
  const go = (address: string) => attempt(() => port.goTo(address));
  const told = story.tells === "nothing selected" ? undefined : story.selection;
  const selection = (story.tells === "calls" && story.below) || told;
  return (
    <div class="pane">
      <ViewTabs view={view} onView={onView} />
      <p class="pane-said" role="status">
        {said}
      </p>
      <div id="pane-panel" role="tabpanel" aria-labelledby={`pane-tab-${view}`}>
        {view === "Explain" ? (
          <>
            <CellHeading
              story={story}
              onPrint={() => attempt(printPage)}
              onRecalculate={() => attempt(() => port.recalculate(), "Everything is calculated anew.")}
            />
            <ExplainView key={told?.address} story={story} onGo={go} />
          </>
        ) : view === "Sheets" ? (
          <SheetsView port={port} />
        ) : (
          <FunctionsView catalogue={catalogue} port={port} selection={selection} />
        )}
      </div>
    </div>
  );
};

interface Props {
  readonly port: Port;
  readonly catalogue: readonly AnyDefinition[];
  readonly view: View;
  readonly onView: (view: View) => void;
}
