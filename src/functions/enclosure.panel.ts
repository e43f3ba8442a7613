import { define } from "../definition/define";
import { list, optional } from "../definition/parameter";
import { copperSource, panelOf } from "../enclosure/panel";
import { say } from "../metrology/say";
import type { Source } from "../metrology/source";
import { ambientLaw, usualTripRise } from "../trip/ambient";
import { referenceSource } from "../trip/iec60898-tables";
import { iec60947Reference } from "../trip/iec60947";
import { continuousSource } from "../trip/nfpa70";
import { holdSource } from "../trip/ul489-tables";
import { allCoolingSources, coolingSources, enclosureCautions, methodCautions } from "./accounts/cooling";
import { noteOf, type PanelAccount, panelCautions, panelSteps } from "./accounts/panel";
import {
  airTemperature,
  coolingOf,
  depth,
  type GivenEnclosure,
  height,
  method,
  mounting,
  otherWatts,
  width,
} from "./arguments/enclosure";
import { panelLists, panelOptions, waysOf } from "./arguments/panel";
import { refuseZero } from "./arguments/zero-degrees";
import { marginsPicture } from "./pictures/margins";

/** Where a rating stands unchanged. */
const ratingSources: readonly Source[] = [referenceSource, iec60947Reference, holdSource];

type Given = GivenEnclosure &
  Parameters<typeof waysOf>[0] & {
    readonly otherWatts?: readonly number[];
    readonly lossesFollow?: "constant" | "copper";
  };

const solve = (given: Given): PanelAccount => {
  refuseZero("room", given.room);
  const rows = waysOf(given);
  const places = rows.flatMap((way, i) => (way ? [i + 1] : []));
  const ways = rows.flatMap((way) => (way ? [way] : []));
  const cooling = coolingOf(given);
  const others = (given.otherWatts ?? []).reduce((sum, watts) => sum + watts, 0);
  const lossLaw = given.lossesFollow ?? "constant";
  return {
    panel: panelOf({ ways, otherWatts: others, cooling, lossLaw }),
    ways,
    places,
    cooling,
    lossLaw,
    otherWatts: others,
  };
};

export default define({
  name: "ENCLOSURE.PANEL",
  summary:
    "A whole board in its enclosure: how warm the air inside gets, and what that leaves of each breaker against its load.",
  parameters: {
    ...panelLists,
    height,
    width,
    depth,
    mounting,
    room: airTemperature("air of the room around the enclosure"),
    characteristic: panelOptions.characteristic,
    method,
    poles: panelOptions.poles,
    otherWatts: optional(list(otherWatts), "nothing else"),
    lossesFollow: panelOptions.lossesFollow,
  },
  results: [
    { name: "loss", unit: "W", meaning: "heat of the way in the air inside" },
    { name: "re-rated", unit: "A", meaning: "the rating moved to the air inside" },
    { name: "margin", unit: "×", meaning: "re-rated current ÷ load, or “no load”" },
    {
      name: "continuous margin",
      unit: "×",
      meaning: "80 % of the smaller of rating and re-rated current ÷ load, for breakers not listed for 100 %",
    },
    { name: "total", unit: "W", meaning: "all the heat inside (first row only)" },
    {
      name: "inside",
      unit: "°C",
      meaning: "air around the breakers, the top where the method gives it (first row only)",
    },
    { name: "note", unit: "", meaning: "which way falls below a margin of 1 first, and what else wants attention" },
  ],
  answers: "rows",
  sources: [...allCoolingSources, ambientLaw, ...ratingSources, continuousSource, copperSource],
  cautions: [
    "Losses are per pole, warm and settled; the air inside is the same for every way.",
    `Re-rating takes the strip's trip to lie ${usualTripRise} K above its calibration temperature (common practice, 55 to 100 K): breakers differ, and makers print their own tables.`,
    ...enclosureCautions,
    "The continuous margin is the rule of NFPA 70 for breakers not listed for 100 %. Those of the IEC documents are rated for uninterrupted duty (from memory): there it is prudence, not a rule.",
    "A margin above 1 is not a permission: rating, conductor and local code decide what a way may carry.",
  ],
  examples: [
    {
      cells: [[[20], [20]], 4, [[20], [10]], 0.6, 0.4, 0.12, "wall", 40, null, "flat"],
      gives: [
        [4, 18.478873, 0.9239436, 0.7391549, 5, 41.706252, "first below margin 1, at 30 °C inside"],
        [1, 18.478873, 1.8478873, 1.4783098, "", "", ""],
      ],
      within: 1e-7,
      worked:
        "hand-worked: 4 W + 4 W ÷ 4 = 5 W; 5 ÷ (5.5 × 0.5328) = 1.70625 K; 20 A × √((110 − 41.70625) ÷ 80) = 18.4789 A; ÷ 20 A and ÷ 10 A, and 0.8 of that",
    },
    {
      cells: [20, 4, 16, 0.6, 0.4, 0.12, "wall", 30, "UL 489", "flat", 2, 2.44],
      gives: [[5.12, 20, 1.25, 1, 7.56, 32.5798526, "first below margin 1, at 63.4 °C inside"]],
      within: 1e-7,
      worked:
        "hand-worked: 2 × 4 W × 0.8² + 2.44 W = 7.56 W; 30 + 7.56 ÷ 2.9304 °C, not above 40 °C, so 20 A stand; 20 ÷ 16; 16 ÷ 16; 105 − 65 × 0.8² = 63.4 °C",
    },
  ],
  calculate: (given) => {
    const account = solve(given);
    const { panel, places } = account;
    return waysOf(given).map((_, row) => {
      const i = places.indexOf(row + 1);
      const totals = row === 0 ? [panel.total, panel.inside] : ["", ""];
      const way = panel.ways[i];
      if (!way) return ["", "", "", "", ...totals, ""];
      const shown = (margin: number) => (Number.isFinite(margin) ? margin : "no load");
      return [way.watts, way.rerated, shown(way.margin), shown(way.continuousMargin), ...totals, noteOf(account, i)];
    });
  },
  explain: (given) => {
    const account = solve(given);
    const { panel, places, cooling } = account;
    const { first, total, inside } = panel;
    const held = `${say(total, "W")} warm the air around the breakers to ${say(inside, "°C")}`;
    const lowest = first === undefined ? undefined : panel.ways[first];
    return {
      steps: panelSteps(account),
      answer: lowest
        ? `By the method "${cooling.method}" ${held}; way ${places[first as number]} falls below a margin of 1 first and has ${say(lowest.margin, "×")} now.`
        : `By the method "${cooling.method}" ${held}; no way carries a load.`,
      sources: [
        ...coolingSources[cooling.method],
        ambientLaw,
        ...ratingSources,
        continuousSource,
        ...(account.lossLaw === "copper" ? [copperSource] : []),
      ],
      cautions: [...panelCautions(account), ...methodCautions(cooling, false)],
    };
  },
  plot: (given) => {
    const { panel, places } = solve(given);
    return marginsPicture(panel, places);
  },
});
