import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import {
  continuousShare,
  copperPerKelvin,
  type LossLaw,
  lossGrowth,
  lossReference,
  type PanelResult,
  type PanelWay,
} from "../../enclosure/panel";
import { lawOf, ratedAt } from "../../enclosure/rerating";
import type { Cooling } from "../../enclosure/rise";
import { say, sayNumber } from "../../metrology/say";
import { coolingSteps } from "./cooling";
import { exchangedCaution } from "./exchanged";

export interface PanelAccount {
  readonly panel: PanelResult;
  readonly ways: readonly PanelWay[];
  /** The row of the sheet in which each way stands. */
  readonly places: readonly number[];
  readonly cooling: Cooling;
  readonly lossLaw: LossLaw;
  readonly otherWatts: number;
}

/** The note beside a way: only what wants attention. */
export const noteOf = (
  { panel: { ways: results, first }, ways }: Pick<PanelAccount, "panel" | "ways">,
  i: number,
): string => {
  const { margin, fallsAt } = results[i] as PanelResult["ways"][number];
  const { load, rating } = ways[i] as PanelWay;
  const notes = [
    load > rating ? "above its rating" : "",
    i === first
      ? Number.isFinite(fallsAt)
        ? `first below margin 1, at ${say(fallsAt, "°C")} inside`
        : "first below margin 1, in any air"
      : margin < 1
        ? "below margin 1"
        : "",
  ];
  return notes.filter(Boolean).join("; ");
};

export const panelSteps = (account: PanelAccount): readonly Step[] => {
  const { panel, ways, cooling, otherWatts, lossLaw } = account;
  const { total, inside, topFactor } = panel;
  const growth = lossGrowth(lossLaw, inside);
  const lost = total - otherWatts;
  return [
    {
      sentence: `The ${ways.length} ${ways.length === 1 ? "way loses" : "ways lose"} poles × loss × (load ÷ rating)² each; with everything else inside`,
      tex: String.raw`P = g\sum n\,P_n\left(\frac{I}{I_n}\right)^2 + P_\mathrm{other} = ${tex(lost)} + ${tex(otherWatts)} = ${tex(total, "W")}`,
      plain: `P = ${say(lost, "W")} + ${say(otherWatts, "W")} = ${say(total, "W")}`,
    },
    ...(lossLaw === "copper"
      ? [
          {
            sentence: `The losses follow copper's resistance from ${lossReference} °C to the air inside; heat and temperature are solved together`,
            tex: String.raw`g = 1 + ${copperPerKelvin}\,(${tex(inside)} - ${lossReference}) = ${tex(growth)}`,
            plain: `g = 1 + ${copperPerKelvin} × (${sayNumber(inside)} − ${lossReference}) = ${sayNumber(growth)}`,
          },
        ]
      : []),
    ...coolingSteps(cooling, total, (inside - cooling.room) / topFactor),
    ...(topFactor > 1
      ? [
          {
            sentence: "The breakers are taken to sit in the warmest air, under the roof",
            plain: `${say(cooling.room, "°C")} + ${say(inside - cooling.room, "K")} = ${say(inside, "°C")}`,
          },
        ]
      : []),
    ...firstSteps(account),
    {
      sentence:
        "The heat from which on there is no balance: the air is as hot as a strip at its trip, and it trips without a current",
      plain: `${say(panel.runsAway.watts, "W")} at ${say(panel.runsAway.inside, "°C")} inside`,
    },
  ];
};

/** How the way that falls first is re-rated. */
const firstSteps = ({ panel, ways, places }: PanelAccount): readonly Step[] => {
  const { first, inside, firstWatts } = panel;
  if (first === undefined) return [{ sentence: "No way carries a load, so there is no margin to fall" }];
  const { rating, load, characteristic } = ways[first] as PanelWay;
  const { rerated, margin, continuousMargin, fallsAt } = panel.ways[first] as PanelResult["ways"][number];
  const { reference, tripRise } = lawOf(characteristic);
  const held = characteristic.holdCalibration !== undefined && inside <= reference;
  const place = places[first] as number;
  return [
    held
      ? {
          sentence: `Way ${place} falls first; its rating stands up to ${ratedAt(characteristic)} °C`,
          plain: `${say(inside, "°C")} is not above ${ratedAt(characteristic)} °C, so ${say(rating, "A")} stay ${say(rerated, "A")}`,
        }
      : {
          sentence: `Way ${place} falls first; its ${say(rating, "A")} of ${say(reference, "°C")} move with the square root of the rise that is left to the strip's trip`,
          tex: String.raw`I = I_n\sqrt{(${tex(reference)} + ${tex(tripRise)} - ${tex(inside)}) / ${tex(tripRise)}} = ${tex(rerated, "A")}`,
          plain: `${say(rating, "A")} × √((${sayNumber(reference)} + ${sayNumber(tripRise)} − ${sayNumber(inside)}) ÷ ${sayNumber(tripRise)}) = ${say(rerated, "A")}`,
        },
    {
      sentence:
        "Its margin is that current against its load; for continuous load 80 % of the smaller of rating and re-rated current counts",
      tex: String.raw`\frac{${tex(rerated, "A")}}{${tex(load, "A")}} = ${tex(margin)}, \quad \frac{${continuousShare}\cdot ${tex(Math.min(rerated, rating))}}{${tex(load)}} = ${tex(continuousMargin)}`,
      plain: `${say(rerated, "A")} ÷ ${say(load, "A")} = ${say(margin, "×")}; continuous ${continuousShare} × ${say(Math.min(rerated, rating), "A")} ÷ ${say(load, "A")} = ${say(continuousMargin, "×")}`,
    },
    {
      sentence: "It falls below 1 where the air leaves just its load",
      plain: Number.isFinite(fallsAt)
        ? firstWatts > 0
          ? `at ${say(fallsAt, "°C")} inside, which ${say(firstWatts, "W")} would make`
          : `at ${say(fallsAt, "°C")}, which the room alone has`
        : `${say(load, "A")} are more than ${say(rating, "A")} in any air`,
    },
  ];
};

/** What must be said of this board. */
export const panelCautions = ({ panel, ways, places, lossLaw }: PanelAccount): readonly string[] => {
  const overloaded = places.filter((_, i) => (ways[i] as PanelWay).load > (ways[i] as PanelWay).rating);
  const raised = ways.some((way, i) => (panel.ways[i]?.rerated ?? 0) > way.rating);
  const ul = ways.some(({ characteristic }) => characteristic.holdCalibration !== undefined);
  return [
    ...exchangedCaution(ways),
    ...(overloaded.length > 0
      ? [`More than the rating flows in way ${overloaded.join(", ")}: an overload, whatever its margin says.`]
      : []),
    ...(raised
      ? [
          "A re-rated current above the rating is where the bimetal's edge lies in cool air, never a permitted load: that is the rating and the conductor.",
        ]
      : []),
    ...(ul
      ? [
          "UL 489 gives no rule for re-rating above 40 °C; the square-root law is physics put on top. Ask the breaker's maker.",
        ]
      : []),
    ...(lossLaw === "copper"
      ? ["Losses measured warm already hold a part of copper's growth, so “copper” errs on the warm side."]
      : []),
  ];
};
