import { useEffect, useState } from "preact/hooks";
import type { AnyDefinition } from "../../../definition/define";
import type { Port, Selection } from "../port";
import { type Story, storyOf } from "./story";

/** Follows the selected cell; reads it again when the sheet has been calculated. */
export const useStory = (port: Port, catalogue: readonly AnyDefinition[]): Story => {
  const [story, setStory] = useState<Story>({ tells: "nothing selected" });
  useEffect(() => {
    let selection: Selection | undefined;
    let newest = 0;
    const read = async () => {
      // An earlier cell may be answered after a later one.
      const mine = ++newest;
      const next = await storyOf(selection, port, catalogue);
      if (mine === newest) setStory(next);
    };
    const stops = [
      port.onSelection((next) => {
        selection = next;
        void read();
      }),
      port.onCalculated(() => void read()),
    ];
    return () => {
      newest = Infinity;
      for (const stop of stops) stop();
    };
  }, [port, catalogue]);
  return story;
};
