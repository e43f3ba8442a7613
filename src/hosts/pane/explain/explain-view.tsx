import { useState } from "preact/hooks";
import { CallCard } from "./call-card";
import { CallChooser } from "./call-chooser";
import { CellError } from "./cell-error";
import { OrdinaryCell } from "./ordinary-cell";
import type { Story } from "./story";

/** What there is to tell about the selected cell. A new cell starts anew: give it the address as its key. */
export const ExplainView = ({ story, onGo, onHelp }: Props) => {
  const [chosen, choose] = useState(0);
  if (story.tells !== "calls") return <OrdinaryCell story={story} />;
  const { selection, calls } = story;
  const at = Math.min(chosen, calls.length - 1);
  const call = calls[at];
  return (
    <>
      <CellError value={selection.value} />
      {calls.length > 1 && <CallChooser calls={calls} chosen={at} onChoose={choose} />}
      {call && <CallCard key={`${at} ${call.row}`} call={call} value={selection.value} onGo={onGo} onHelp={onHelp} />}
    </>
  );
};

interface Props {
  readonly story: Story;
  readonly onGo: (address: string) => void;
  readonly onHelp: (name: string) => void;
}
