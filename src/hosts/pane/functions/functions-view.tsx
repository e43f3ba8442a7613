import { useState } from "preact/hooks";
import type { AnyDefinition } from "../../../definition/define";
import { roomsOf } from "../../../derived/rooms";
import type { Port, Selection } from "../port";
import { find } from "./find";
import { FunctionForm } from "./function-form";
import { FunctionList } from "./function-list";

/** Find a function by word or room, fill in its form, put it into the sheet. */
export const FunctionsView = ({ catalogue, port, selection }: Props) => {
  const [words, setWords] = useState("");
  const [chosen, choose] = useState<AnyDefinition>();
  if (chosen)
    return <FunctionForm definition={chosen} port={port} selection={selection} onBack={() => choose(undefined)} />;
  const found = words.trim() === "" ? undefined : find(words, catalogue);
  return (
    <div class="pane-card">
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
      />
      <p class="pane-count" role="status">
        {found &&
          (found.length === 0 ? "None of our functions is about that." : `${found.length} of ${catalogue.length}`)}
      </p>
      {found ? (
        <FunctionList functions={found} onChoose={choose} />
      ) : (
        roomsOf(catalogue).map((room) => (
          <details key={room.name} class="pane-room" open={room.name === "TRIP"}>
            <summary class="pane-room-name">
              {room.about} <span class="pane-room-count">{room.functions.length}</span>
            </summary>
            <FunctionList functions={room.functions} onChoose={choose} />
          </details>
        ))
      )}
    </div>
  );
};

interface Props {
  readonly catalogue: readonly AnyDefinition[];
  readonly port: Port;
  readonly selection: Selection | undefined;
}
