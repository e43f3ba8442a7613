import { useState } from "preact/hooks";
import type { AnyDefinition } from "../../definition/define";
import { CellHeading } from "./cell-heading";
import { ExplainView } from "./explain/explain-view";
import { useStory } from "./explain/use-story";
import { FunctionsView } from "./functions/functions-view";
import { HelpView } from "./help/help-view";
import { useHelp } from "./help/use-help";
import type { Port } from "./port";
import { printPage } from "./print";
import { SheetsView } from "./sheets/sheets-view";
import { type View, ViewPanel, ViewTabs } from "./views";

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
  const help = useHelp(view, onView);
  const choose = (next: View) => {
    help.leave();
    onView(next);
  };
  return (
    <div class="pane">
      <ViewTabs view={view} onView={choose} />
      <p class="pane-said" role="status">
        {said}
      </p>
      <ViewPanel of="Explain" view={view}>
        <CellHeading
          story={story}
          onPrint={() => attempt(printPage)}
          onRecalculate={() => attempt(() => port.recalculate(), "Everything is calculated anew.")}
        />
        <ExplainView key={told?.address} story={story} onGo={go} onHelp={help.ask} />
      </ViewPanel>
      <ViewPanel of="Functions" view={view}>
        <FunctionsView catalogue={catalogue} port={port} selection={selection} onHelp={help.ask} />
      </ViewPanel>
      <ViewPanel of="Sheets" view={view}>
        <SheetsView port={port} />
      </ViewPanel>
      <ViewPanel of="Help" view={view}>
        <HelpView catalogue={catalogue} help={help} />
      </ViewPanel>
    </div>
  );
};

interface Props {
  readonly port: Port;
  readonly catalogue: readonly AnyDefinition[];
  readonly view: View;
  readonly onView: (view: View) => void;
}
