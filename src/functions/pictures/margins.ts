import type { Plot } from "../../definition/plot";
import type { PanelResult } from "../../enclosure/panel";
import { say } from "../../metrology/say";
import { continuousFactor } from "../../trip/nfpa70";

/** Margins above this are drawn at it: what matters lies near 1. */
const highest = 4;

/** The ways of a board by their margin against the lines at 1 and, for the 80 % rule, at 1.25. Places are the rows of the sheet. */
export const marginsPicture = ({ ways, first }: PanelResult, places: readonly number[]): Plot | undefined => {
  const loaded = ways.flatMap(({ margin }, i) =>
    Number.isFinite(margin) ? [{ x: places[i] as number, y: Math.min(margin, highest) }] : [],
  );
  if (first === undefined) return undefined;
  const from = 0;
  const to = Math.max(...places) + 1;
  const flat = (y: number) => [
    { x: from, y },
    { x: to, y },
  ];
  const lowest = ways[first]?.margin as number;
  const at = places[first] as number;
  return {
    title: "The ways by their margin",
    sentence: `Re-rated current ÷ load of ${loaded.length} loaded ways; way ${at} is the first to fall below 1 and has ${say(lowest, "×")} now. Margins above ${highest} are drawn at ${highest}.`,
    x: { quantity: "way", unit: "", scale: "linear", from, to },
    y: { quantity: "margin", unit: "×", scale: "linear", from: 0, to: highest },
    lines: [
      { name: "margin 1", role: "limit", samples: flat(1) },
      { name: "continuous load, 80 %", role: "limit", samples: flat(continuousFactor) },
      { name: "margin of each way", role: "course", samples: loaded },
    ],
    points: [{ name: `way ${at}, the first to fall below 1`, role: "asked", x: at, y: Math.min(lowest, highest) }],
  };
};
