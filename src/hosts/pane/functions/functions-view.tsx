import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { AnyDefinition } from "../../../definition/define";
import { roomsOf } from "../../../derived/rooms";
import type { Port, Selection } from "../port";
import { whereOneWas } from "../where-one-was";
import { find } from "./find";
import { FunctionForm } from "./function-form";
import { FunctionList } from "./function-list";
import { stepAlong } from "./step-along";

/** Find a function by word or room, fill in its form, put it into the sheet. */
export const FunctionsView = ({ catalogue, port, selection, onHelp }: Props) => {
  const [words, setWords] = useState("");
  const [chosen, choose] = useState<AnyDefinition>();
  /** By function: a form is as it was left. */
  const [typed, setTyped] = useState<Readonly<Record<string, readonly string[]>>>({});
  const goBack = useRef<(() => void) | undefined>(undefined);
  const open = (definition: AnyDefinition) => {
    goBack.current = whereOneWas();
    choose(definition);
  };
  // The list is in sight again only now.
  useLayoutEffect(() => {
    if (!chosen) goBack.current?.();
  }, [chosen]);
  const found = words.trim() === "" ? undefined : find(words, catalogue);
  return (
    <>
      {chosen && (
        <FunctionForm
          definition={chosen}
          typed={typed[chosen.name] ?? []}
          onTyped={(texts) => setTyped({ ...typed, [chosen.name]: texts })}
          port={port}
          selection={selection}
          onBack={() => choose(undefined)}
          onHelp={onHelp}
        />
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the arrow keys go from one function to the next, beside the Tab key. */}
      <div class="pane-card" hidden={chosen !== undefined} onKeyDown={stepAlong}>
        <label class="pane-label" for="pane-find">
          Find a function by what it is about
        </label>
        <input
          id="pane-find"
          class="pane-field"
          type="search"
          value={words}
          placeholder="trip time, drop, motor …"
          onInput={(event) => setWords(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === "Enter" && found?.[0]) open(found[0]);
          }}
        />
        <p class="pane-count" role="status">
          {found &&
            (found.length === 0
              ? "None of our functions is about that: they are about thermal-magnetic circuit breakers and their tests."
              : `${found.length} of ${catalogue.length}, the nearest first`)}
        </p>
        {found ? (
          <FunctionList functions={found} onChoose={open} />
        ) : (
          roomsOf(catalogue).map((room) => (
            <details key={room.name} class="pane-room" open={room.name === "TRIP"}>
              <summary class="pane-room-name">
                {room.about} <span class="pane-room-count">{room.functions.length}</span>
              </summary>
              <FunctionList functions={room.functions} onChoose={open} />
            </details>
          ))
        )}
      </div>
    </>
  );
};

interface Props {
  readonly catalogue: readonly AnyDefinition[];
  readonly port: Port;
  readonly selection: Selection | undefined;
  readonly onHelp: (name: string) => void;
}
