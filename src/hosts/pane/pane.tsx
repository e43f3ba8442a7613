import { useState } from "preact/hooks";
import type { AnyDefinition } from "../../definition/define";
import { cellOf } from "./address";
import { ExplainView } from "./explain/explain-view";
import type { Story } from "./explain/story";
import { useStory } from "./explain/use-story";
import { FunctionsView } from "./functions/functions-view";
import type { Port } from "./port";
import { type View, ViewTabs } from "./views";

/** The pane beside the sheet. It keeps nothing and asks no one but its host. */
export const Pane = ({ port, catalogue }: { port: Port; catalogue: readonly AnyDefinition[] }) => {
  const story = useStory(port, catalogue);
  const [view, setView] = useState<View>("Explain");
  const [failure, setFailure] = useState("");
  const go = (address: string) =>
    port.goTo(address).then(
      () => setFailure(""),
      (reason: unknown) => setFailure(reason instanceof Error ? reason.message : String(reason)),
    );
  const selection = story.tells === "nothing selected" ? undefined : story.selection;
  return (
    <div class="pane">
      <ViewTabs view={view} onView={setView} />
      <p class="pane-failure" role="status">
        {failure}
      </p>
      <div id="pane-panel" role="tabpanel" aria-labelledby={`pane-tab-${view}`}>
        {view === "Explain" ? (
          <>
            <CellHeading story={story} />
            <ExplainView key={selection?.address} story={story} onGo={go} />
          </>
        ) : (
          <FunctionsView catalogue={catalogue} port={port} selection={selection} />
        )}
      </div>
    </div>
  );
};

const CellHeading = ({ story }: { story: Story }) => {
  if (story.tells === "nothing selected") return <h1 class="pane-title">No cell selected</h1>;
  const { address, formula } = story.selection;
  return (
    <header class="pane-header">
      <h1 class="pane-title">Cell {cellOf(address)}</h1>
      {formula && <code class="pane-formula">{formula}</code>}
    </header>
  );
};
