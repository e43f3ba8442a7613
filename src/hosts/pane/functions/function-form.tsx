import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Argument } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { type Parameter, sheetName } from "../../../definition/parameter";
import { sheetOf } from "../address";
import { Broken } from "../broken";
import { CautionsPart } from "../explain/cautions-part";
import { prefix } from "../explain/formula";
import { SourcesPart } from "../explain/sources-part";
import { HelpWay } from "../help/help-way";
import type { Port, Selection } from "../port";
import { formulaOf, readEntry, typedAs } from "./entry";
import { Field } from "./field";
import { LiveAnswer } from "./live-answer";
import { useAnswer } from "./use-answer";

/** A form made from a definition: a field for each argument, the answer as it is filled in, and the formula to insert. */
export const FunctionForm = ({ definition, typed, onTyped, port, selection, onBack, onHelp }: Props) => {
  const parameters = Object.entries(definition.parameters as Record<string, Parameter>);
  const [said, setSaid] = useState("");
  const [isOpen, setOpen] = useState(false);
  const entries = useMemo(
    () =>
      Object.values(definition.parameters as Record<string, Parameter>).map((parameter, i) =>
        readEntry(typed[i] ?? "", parameter),
      ),
    [definition, typed],
  );
  const answer = useAnswer(definition, entries, port, sheetOf(selection?.address ?? ""));
  const formula = formulaOf(definition, entries);
  const insert = () =>
    port.insertFormula(formula).then(
      () => setSaid("It stands in the selected cell."),
      (reason: unknown) => setSaid(reason instanceof Error ? reason.message : String(reason)),
    );
  const example = definition.examples[0];
  const fields = parameters.map(([key, parameter], i) => (
    <Field
      key={key}
      name={key}
      parameter={parameter}
      value={typed[i] ?? ""}
      selection={selection}
      onValue={(value) => onTyped(parameters.map((_, at) => (at === i ? value : (typed[at] ?? ""))))}
    />
  ));
  // Those that may be left out come last.
  const wanted = parameters.filter(([, { otherwise }]) => otherwise === undefined).length;
  const title = useRef<HTMLHeadingElement>(null);
  // Before the form is to be seen: later it would take the focus from a field that somebody has gone to.
  useLayoutEffect(() => {
    title.current?.focus({ preventScroll: true });
    title.current?.closest(".pane")?.scrollIntoView({ block: "start" });
  }, []);
  return (
    <article class="pane-card" onKeyDown={(event) => event.key === "Escape" && onBack()}>
      <button type="button" class="pane-step-button" title="Or press Escape" onClick={onBack}>
        All functions
      </button>
      <h2 ref={title} class="pane-name pane-name-below" tabIndex={-1}>
        <span class="pane-prefix">{prefix}</span>
        <Broken text={definition.name} after={/(?<=\.)/} />
      </h2>
      <p class="pane-summary-line">{definition.summary}</p>
      <div class="pane-form-ways">
        <HelpWay name={definition.name} onHelp={onHelp} />
        {example && parameters.length > 0 && (
          <button
            type="button"
            class="pane-go"
            onClick={() => onTyped(parameters.map((_, i) => typedAs(example.cells[i] as Argument)))}
          >
            Fill in an example
          </button>
        )}
      </div>
      <div class="pane-form">{fields.slice(0, wanted)}</div>
      {wanted < fields.length && (
        <details
          class="pane-may"
          open={isOpen || typed.slice(wanted).some((text) => text !== "")}
          onToggle={(event) => setOpen(event.currentTarget.open)}
        >
          <summary class="pane-may-name">May be left out: {namesOf(parameters.slice(wanted))}</summary>
          {fields.slice(wanted)}
        </details>
      )}
      <LiveAnswer answer={answer} />
      <p class="pane-formula pane-form-formula">
        <Broken text={formula} after={/(?<=[,;(])/} />
      </p>
      <div class="pane-rows">
        <button type="button" class="pane-insert" onClick={insert}>
          Insert into {selection ? selection.address : "the selected cell"}
        </button>
      </div>
      <p class="pane-count" role="status">
        {said}
      </p>
      <CautionsPart cautions={definition.cautions} />
      <SourcesPart sources={definition.sources} />
    </article>
  );
};

const namesOf = (parameters: readonly (readonly [string, Parameter])[]): string =>
  parameters.map(([key]) => sheetName(key)).join(", ");

interface Props {
  readonly definition: AnyDefinition;
  /** What stands in the fields, in their order. */
  readonly typed: readonly string[];
  readonly onTyped: (typed: readonly string[]) => void;
  readonly port: Port;
  readonly selection: Selection | undefined;
  readonly onBack: () => void;
  readonly onHelp: (name: string) => void;
}
