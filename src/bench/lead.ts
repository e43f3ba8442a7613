import type { Conductor } from "../contact/conductor";
import { NoAnswer } from "../metrology/no-answer";
import { say, sayNumber } from "../metrology/say";
import type { Source } from "../metrology/source";

// The adiabatic law: for a short while all heat stays in the copper, whose resistance rises with its temperature θ,
//
//     dθ/dt = (I / (K·S))² · (β + θ),   so   β + θ = (β + θ₀) · e^((I / (K·S))²·t).

export const adiabaticSource: Source = {
  document: "IEC 60949 and IEC 60364-5-54, Annex A",
  place: "I²·t = K²·S²·ln((θ + β)/(θ₀ + β)), copper K = 226, β = 234.5",
  standing: "corroborated",
};

/** K of copper, A·√s per mm²: √(heat capacity · (β + 20) ÷ resistivity at 20 °C). */
export const copperK = 226;
/** β of copper, K: its resistance would reach zero this far below 0 °C if its straight line went on. */
export const copperBeta = 234.5;
/** °C */
const copperMelts = 1083;

/** Up to here, s, the heat that leaves the copper is not worth counting; beyond, the law is an upper bound. */
export const shortShot = 5;
export const shortShotSource: Source = {
  document: "IEC 60364-4-43",
  place: "434.5.2, durations up to 5 s",
  standing: "from memory",
};

/** What PVC carries for long, °C. */
export const pvcForLong = 70;
export const pvcSource: Source = {
  document: "IEC 60364-4-43",
  place: "Table 43A, PVC: 70 °C for long; at the end of a short shot 160 °C, above 300 mm² 140 °C (from memory)",
  standing: "corroborated",
};
/** What PVC, the tenderest insulation of a common lead, may reach at the end of a short shot, °C. */
export const insulationLimit = ({ areaSquareMillimetres }: Conductor): number =>
  areaSquareMillimetres > 300 ? 140 : 160;

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
  const rise = (copperBeta + start) * Math.expm1(shotExponent(shot));
  if (start + rise < copperMelts) return rise;
  const melts = Math.log((copperBeta + copperMelts) / (copperBeta + start)) / shotExponent({ ...shot, seconds: 1 });
  const so = `${sayNumber(current)} A through ${size.name} would melt the copper after ${say(melts, "s")} if no heat left it`;
  throw new NoAnswer(
    melts <= shortShot
      ? `current: ${so}; a thicker lead is wanted.`
      : `time: ${so}, but in ${say(seconds, "s")} most of it does leave: for long currents the conductor's ampacity decides, not this law.`,
  );
};
