import { useEffect, useState } from "preact/hooks";
import type { Argument } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { type Explained, explained } from "../../../definition/explained";
import { oneCell } from "../explain/resolved";
import type { Port } from "../port";
import type { Entry } from "./entry";

/** The answer to what stands in a form (`entries` the same array until it changes), anew with each change; a sentence when a reference cannot be followed. */
export const useAnswer = (
  definition: AnyDefinition,
  entries: readonly Entry[],
  port: Port,
  sheet: string,
): Explained | string | undefined => {
  const [answer, setAnswer] = useState<Explained | string>();
  useEffect(() => {
    let isWanted = true;
    const show = (next: Explained | string | undefined) => isWanted && setAnswer(next);
    // A function without arguments has nothing to wait for.
    if (entries.length > 0 && entries.every(({ as }) => as === "left out")) show(undefined);
    else
      valuesFor(entries, port, sheet).then(
        (args) => show(explained(definition, args)),
        (reason: unknown) => show(reason instanceof Error ? reason.message : String(reason)),
      );
    return () => {
      isWanted = false;
    };
  }, [definition, entries, port, sheet]);
  return answer;
};

const valuesFor = (entries: readonly Entry[], port: Port, sheet: string): Promise<Argument[]> =>
  Promise.all(
    entries.map(async (entry): Promise<Argument> => {
      if (entry.as === "left out") return undefined;
      return entry.as === "value" ? entry.value : oneCell(await port.valuesAt(entry.text, sheet));
    }),
  );
