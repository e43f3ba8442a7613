import { useMemo, useState } from "preact/hooks";
import type { Cell } from "../../../definition/cells";
import type { Explained } from "../../../definition/explained";
import { Broken } from "../broken";
import { HelpWay } from "../help/help-way";
import { Picture } from "../picture/picture";
import { AnswerPart } from "./answer-part";
import { CautionsPart } from "./cautions-part";
import { OutdatedError } from "./cell-error";
import { prefix } from "./formula";
import { InputsPart } from "./inputs-part";
import { RefusalPart } from "./refusal-part";
import type { ResolvedCall } from "./resolved";
import { RowStepper } from "./row-stepper";
import { SourcesPart } from "./sources-part";
import { StepsPart } from "./steps-part";
import { told } from "./told";

/** One call of one of our functions, told from its name to its sources. */
export const CallCard = ({ call, value, onGo, onHelp }: Props) => {
  const [row, setRow] = useState(call.row);
  const explained = useMemo(() => orDefect(() => told(call, row)), [call, row]);
  if (typeof explained === "string") return <p class="pane-part pane-refusal">{explained}</p>;
  // A column is known where the cell shows one of the call's own results.
  const isCellsOwn = row === call.row && call.column !== undefined;
  return (
    <article class="pane-card">
      <h2 class="pane-name">
        <span class="pane-prefix">{prefix}</span>
        <Broken text={explained.name} after={/(?<=\.)/} />
      </h2>
      <p class="pane-summary-line">{explained.summary}</p>
      <HelpWay name={explained.name} onHelp={onHelp} />
      <RowStepper explained={explained} onRow={setRow} />
      {isCellsOwn && explained.results.length > 0 && <OutdatedError value={value} />}
      {explained.refusal ? (
        <RefusalPart call={call} refusal={explained.refusal} />
      ) : (
        <AnswerPart
          explained={explained}
          answerRow={call.answerRow}
          column={row === call.row ? call.column : undefined}
        />
      )}
      <PlotPart explained={explained} />
      {!explained.refusal && <CautionsPart cautions={explained.cautions} />}
      <InputsPart call={call} explained={explained} row={row} onGo={onGo} />
      <StepsPart steps={explained.steps} />
      {explained.refusal && <CautionsPart cautions={explained.cautions} />}
      <SourcesPart sources={explained.sources} />
    </article>
  );
};

interface Props {
  readonly call: ResolvedCall;
  /** What the selected cell shows. */
  readonly value: Cell;
  readonly onGo: (address: string) => void;
  readonly onHelp: (name: string) => void;
}

/** What is thrown here is no refusal but our own fault, and looks like one. */
const orDefect = (tell: () => Explained): Explained | string => {
  try {
    return tell();
  } catch (thrown) {
    return `This function has a defect, please report it: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
  }
};

const PlotPart = ({ explained: { plot, name, row } }: { explained: Explained }) =>
  plot ? <Picture key={`${name} ${row} ${plot.sentence}`} plot={plot} /> : null;
