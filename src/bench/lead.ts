import type { Conductor } from "../contact/conductor";
import { copperZero } from "../contact/copper";
import { NoAnswer } from "../metrology/no-answer";
import { say, sayNumber } from "../metrology/say";
import { loneValues, type Source } from "../metrology/source";

// The adiabatic law: for a short while all heat stays in the copper, whose resistance rises with its temperature θ,
//
//     dθ/dt = (I / (K·S))² · (β + θ),   so   β + θ = (β + θ₀) · e^((I / (K·S))²·t).

/** K of copper, A·√s per mm²: √(heat capacity · (β + 20) ÷ resistivity at 20 °C). */
export const copperK = 226;
/** °C */
export const copperMelts = 1083;

const guard = "test/bench/lead.published.test.ts";

export const adiabaticSource: Source = {
  document: "IEC 60949 and IEC 60364-5-54, Annex A",
  place: "I²·t = K²·S²·ln((θ + β)/(θ₀ + β))",
  standing: "corroborated",
  tables: [
    {
      title: "Copper in a short shot",
      columns: loneValues,
      rows: [
        ["K", copperK, "A·√s/mm²"],
        ["β", copperZero, "K"],
      ],
      guard,
    },
  ],
};

/** Up to here, s, the heat that leaves the copper is not worth counting; beyond, the law is an upper bound. */
export const shortShot = 5;
export const meltingSource: Source = {
  document: "Onderdonk's equation",
  edition: "1928",
  place: "melting of copper",
  standing: "corroborated",
  tables: [{ title: "Melting of copper", columns: loneValues, rows: [["copper melts at", copperMelts, "°C"]], guard }],
};

export const shortShotSource: Source = {
  document: "IEC 60364-4-43",
  place: "434.5.2, short durations",
  standing: "from memory",
  tables: [{ title: "Short shots", columns: loneValues, rows: [["lasting at most", shortShot, "s"]], guard }],
};

/** What PVC carries for long, °C. */
export const pvcForLong = 70;
/** What PVC, the tenderest insulation of a common lead, may reach at the end of a short shot, °C: less above a size, mm². */
const pvcAtEnd = { usual: 160, above: 300, thick: 140 } as const;

export const pvcSource: Source = {
  document: "IEC 60364-4-43",
  place: "Table 43A, PVC",
  standing: "corroborated",
  tables: [
    {
      title: "Temperatures of PVC insulation",
      columns: loneValues,
      rows: [
        ["for long", pvcForLong, "°C"],
        [`at the end of a short shot, up to ${pvcAtEnd.above} mm²`, pvcAtEnd.usual, "°C"],
        [`at the end of a short shot, above ${pvcAtEnd.above} mm²`, pvcAtEnd.thick, "°C"],
      ],
      standings: ["corroborated", "corroborated", "from memory"],
      guard,
    },
  ],
};
/** °C that the insulation of a lead may reach at the end of a short shot. */
export const insulationLimit = ({ areaSquareMillimetres }: Conductor): number =>
  areaSquareMillimetres > pvcAtEnd.above ? pvcAtEnd.thick : pvcAtEnd.usual;

/** °C of a lead before a shot where nothing is said: the air that tables of ampacity are for. */
export const usualStart = 30;

export const usualStartSource: Source = {
  document: "IEC 60364-5-52",
  place: "Annex B, current-carrying capacities in air (NFPA 70, Table 310.16 takes the same)",
  standing: "from memory",
  tables: [
    {
      title: "Air that a lead is taken to start from",
      columns: loneValues,
      rows: [["air of the tables of ampacity", usualStart, "°C"]],
      guard,
    },
  ],
};

/** One shot through a lead: A for some s, from °C. */
export interface Shot {
  readonly current: number;
  readonly seconds: number;
  readonly size: Conductor;
  readonly start: number;
}

/** (I / (K·S))²·t: what stands in the exponent. */
export const shotExponent = ({ current, seconds, size }: Omit<Shot, "start">): number =>
  (current / (copperK * size.areaSquareMillimetres)) ** 2 * seconds;

/** °C by which the lead warms while no heat leaves it. Throws NoAnswer where the copper would melt first. */
export const leadRise = (shot: Shot): number => {
  const { current, seconds, size, start } = shot;
  const rise = (copperZero + start) * Math.expm1(shotExponent(shot));
  if (start + rise < copperMelts) return rise;
  const melts = Math.log((copperZero + copperMelts) / (copperZero + start)) / shotExponent({ ...shot, seconds: 1 });
  const so = `${sayNumber(current)} A through ${size.name} would melt the copper after ${say(melts, "s")} if no heat left it`;
  throw new NoAnswer(
    melts <= shortShot
      ? `current: ${so}; a thicker lead is wanted.`
      : `time: ${so}, but in ${say(seconds, "s")} most of it does leave: for long currents the conductor's ampacity decides, not this law.`,
  );
};
