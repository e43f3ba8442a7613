import { useState } from "preact/hooks";
import type { AnyDefinition } from "../../definition/define";
import { cellOf } from "./address";
import { ExplainView } from "./explain/explain-view";
import { useStory } from "./explain/use-story";
import type { Port } from "./port";

/** The explanation beside the sheet. It keeps nothing and asks no one but its host. */
export const Pane = ({ port, catalogue }: { port: Port; catalogue: readonly AnyDefinition[] }) => {
  const story = useStory(port, catalogue);
  const [failure, setFailure] = useState("");
  const go = (address: string) =>
    port.goTo(address).then(
      () => setFailure(""),
      (reason: unknown) => setFailure(sentenceOf(reason)),
    );
  const selection = story.tells === "nothing selected" ? undefined : story.selection;
  return (
    <div class="pane">
      <header class="pane-header">
        <h1 class="pane-title">{selection ? `Cell ${cellOf(selection.address)}` : "No cell selected"}</h1>
        {selection?.formula && <code class="pane-formula">{selection.formula}</code>}
      </header>
      <p class="pane-failure" role="status">
        {failure}
      </p>
      <ExplainView key={selection?.address} story={story} onGo={go} />
    </div>
  );
};

const sentenceOf = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));
