import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { View } from "../views";
import { whereOneWas } from "../where-one-was";
import { contents, type HelpPlace, placeOfFunction } from "./trail";

/** Which pages of the reference are open, one behind the other, and the view that help was asked from. */
export interface Help {
  readonly trail: readonly HelpPlace[];
  /** After a step back: the link of the page that it was left by. */
  readonly returned: number | undefined;
  readonly askedFrom: View | undefined;
  /** Opens the page of a function. */
  ask(name: string): void;
  follow(place: HelpPlace): void;
  /** To the page before; from the first to the view that help was asked from, where one was in it. */
  back(): void;
  /** Another view was chosen: nothing leads back to the one before. */
  leave(): void;
}

export const useHelp = (view: View, onView: (view: View) => void): Help => {
  const [trail, setTrail] = useState<readonly HelpPlace[]>([contents]);
  const [returned, setReturned] = useState<number>();
  const [asked, setAsked] = useState<{ readonly from: View; readonly goBack: () => void }>();
  const returning = useRef<(() => void) | undefined>(undefined);
  const show = (places: readonly HelpPlace[], link?: number) => {
    setTrail(places);
    setReturned(link);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: only once the view has changed is the one returned to in sight.
  useLayoutEffect(() => {
    returning.current?.();
    returning.current = undefined;
  }, [view]);
  return {
    trail,
    returned,
    askedFrom: asked?.from,
    ask: (name) => {
      setAsked({ from: view, goBack: whereOneWas() });
      show([placeOfFunction(name)]);
      onView("Help");
    },
    follow: (place) => {
      const last = trail.at(-1);
      const isHere = last?.path === place.path && last.part === place.part;
      show([...(isHere ? trail.slice(0, -1) : trail), place]);
    },
    back: () => {
      if (trail.length > 1) show(trail.slice(0, -1), trail.at(-1)?.link);
      else if (asked) {
        returning.current = asked.goBack;
        setAsked(undefined);
        onView(asked.from);
      }
    },
    leave: () => setAsked(undefined),
  };
};
