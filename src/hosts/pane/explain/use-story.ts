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
    let holding: Story | undefined;
    const read = async () => {
      const mine = ++newest;
      // A calculation tells of itself several times in a row: the last time is enough.
      await Promise.resolve();
      if (mine !== newest) return;
      const next = await storyOf(selection, port, catalogue, holding);
      // An earlier cell may be answered after a later one.
      if (mine !== newest) return;
      holding = next;
      setStory(next);
    };
    const stops = [
      port.onSelection((next) => {
        selection = next;
        void read();
      }),
      port.onCalculated(() => {
        holding = undefined;
        void read();
      }),
    ];
    return () => {
      newest = Infinity;
      for (const stop of stops) stop();
    };
  }, [port, catalogue]);
  return story;
};
