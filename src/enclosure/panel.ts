import { NoAnswer } from "../metrology/no-answer";
import { root } from "../metrology/root";
import { say } from "../metrology/say";
import { loneValues, type Source } from "../metrology/source";
import type { Characteristic } from "../trip/characteristic";
import { continuousFactor } from "../trip/nfpa70";
import { constantsOf } from "./iec60890";
import { fallsBelowLoad, reratedIn, tripTemperature } from "./rerating";
import { type Cooling, wattsAt } from "./rise";
import { type Way, wayWatts } from "./watts";

export interface PanelWay extends Way {
  readonly characteristic: Characteristic;
}

/** How the losses go with the air inside: not at all, or as the resistance of copper. */
export const lossLaws = ["constant", "copper"] as const;

export type LossLaw = (typeof lossLaws)[number];

/** °C of the air in which the losses are taken to have been measured. */
export const lossReference = 20;

/** Copper's resistance grows by this share of its value at that temperature for every kelvin. */
export const copperPerKelvin = 0.00393;

export const copperSource: Source = {
  document: "IEC 60028",
  place: "annealed copper",
  standing: "corroborated",
  tables: [
    {
      title: "Temperature coefficient of copper",
      columns: loneValues,
      rows: [[`growth of the resistance from ${lossReference} °C`, copperPerKelvin, "per K"]],
      guard: "test/enclosure/published.test.ts",
    },
  ],
};

/** Loss in air at this temperature ÷ loss as given. */
export const lossGrowth = (law: LossLaw, inside: number): number =>
  law === "copper" ? 1 + copperPerKelvin * (inside - lossReference) : 1;

/** The part of its rating that a breaker not listed for 100 % may carry for three hours and longer. */
export const continuousShare = 1 / continuousFactor;

export interface Panel {
  readonly ways: readonly PanelWay[];
  /** Heat of everything else, W; it does not grow with the temperature. */
  readonly otherWatts: number;
  readonly cooling: Cooling;
  readonly lossLaw: LossLaw;
}

interface WayResult {
  /** W in the air inside. */
  readonly watts: number;
  /** A */
  readonly rerated: number;
  /** Re-rated current ÷ load; Infinity without a load. */
  readonly margin: number;
  /** 80 % of the smaller of rating and re-rated current ÷ load; Infinity without a load. */
  readonly continuousMargin: number;
  /** °C of the air inside at which the margin falls to 1; −Infinity for a load that no air lets pass. */
  readonly fallsAt: number;
}

export interface PanelResult {
  readonly ways: readonly WayResult[];
  readonly total: number;
  /** °C of the air around the breakers: the top where the method gives it. */
  readonly inside: number;
  /** How far the hottest air is above mid-height: top rise ÷ mid-height rise, 1 where not known. */
  readonly topFactor: number;
  /** The way that falls below a margin of 1 first as the enclosure warms, from 0; undefined without any load. */
  readonly first: number | undefined;
  /** Heat at which the air inside gets there, W; 0 if the room alone is too warm. */
  readonly firstWatts: number;
  /** The heat and the air temperature from which on nothing holds any more: the strips trip without a current. */
  readonly runsAway: { readonly watts: number; readonly inside: number };
}

/**
 * Closes the loop: the losses warm the air, the warm air takes from what each breaker carries (and adds to its loss).
 * Throws NoAnswer where there is no balance below the temperature at which the strips trip by themselves.
 */
export const panelOf = ({ ways, otherWatts, cooling, lossLaw }: Panel): PanelResult => {
  const { room, method, cabinet, partitions } = cooling;
  const topFactor = (method === "IEC TR 60890" && constantsOf(cabinet, partitions).c) || 1;
  const losses = ways.map(wayWatts);
  const lost = losses.reduce((sum, watts) => sum + watts, 0);
  const made = (inside: number) => lossGrowth(lossLaw, inside) * lost + otherWatts;
  const passed = (inside: number) => (inside <= room ? 0 : wattsAt(cooling, (inside - room) / topFactor));

  const hottest = Math.min(...ways.map(({ characteristic }) => tripTemperature(characteristic)));
  const runsAway = { watts: passed(hottest), inside: hottest };
  if (made(hottest) >= runsAway.watts)
    throw new NoAnswer(
      `The heat runs away: the enclosure passes ${say(runsAway.watts, "W")} with the air inside at ${say(hottest, "°C")}, where strips trip without any current, and the losses by then are ${say(made(hottest), "W")}.`,
    );
  const inside =
    made(room) === 0 ? room : room + root((rise) => passed(room + rise) - made(room + rise), 0, hottest - room);

  const results = ways.map((way, i): WayResult => {
    const rerated = reratedIn(inside, way);
    const most = continuousShare * Math.min(way.rating, rerated);
    return {
      watts: lossGrowth(lossLaw, inside) * (losses[i] as number),
      rerated,
      margin: way.load === 0 ? Infinity : rerated / way.load,
      continuousMargin: way.load === 0 ? Infinity : most / way.load,
      fallsAt: fallsBelowLoad(way),
    };
  });
  const loaded = results.filter((_, i) => (ways[i] as PanelWay).load > 0);
  const lowest = loaded.reduce((least, { fallsAt }) => Math.min(least, fallsAt), Infinity);
  const first =
    loaded.length === 0
      ? undefined
      : results.findIndex(({ fallsAt }, i) => fallsAt === lowest && (ways[i] as PanelWay).load > 0);
  return {
    ways: results,
    total: made(inside),
    inside,
    topFactor,
    first,
    firstWatts: passed(lowest === Infinity ? room : lowest),
    runsAway,
  };
};
