import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import type { Propagated } from "../../metrology/propagate";
import { say, sayNumber, type Unit } from "../../metrology/say";
import type { Source } from "../../metrology/source";
import type { DegreesPair } from "../arguments/meter";
import { dropCaution, hotLeadsCaution } from "./cautions";

/** What METER.WATTS and METER.OHMS rest on. */
export const propagationSources: readonly Source[] = [
  {
    document: "JCGM 100",
    edition: "2008",
    place: "5.1.2, 5.2.2 (law of propagation); example H.2",
    standing: "handbook",
  },
  {
    document: "JCGM 100",
    edition: "2008",
    place: "G.4 (effective degrees of freedom), table G.2",
    standing: "handbook",
  },
];

export const propagationCautions: readonly string[] = [
  "Both uncertainties are standard ones (a maker's limit ÷ √3), not limits of error: METER.ERROR gives both.",
  "First order: good while each relative uncertainty is a few per cent.",
  "One meter used for both readings, or readings taken in pairs while the source drifts, are correlated: give the correlation, it may help or hurt.",
  "What the readings do not show is not in it: leads' joints inside the measured drop, a pole not yet warm, a current that is no sine.",
  hotLeadsCaution,
  dropCaution,
];

/** A current and a drop as they were read: A, V, standard uncertainties of both. */
export interface PoleReadings {
  readonly current: number;
  readonly currentUncertainty: number;
  readonly drop: number;
  readonly dropUncertainty: number;
  readonly degrees: DegreesPair | undefined;
}

export const measuredPole = ({ current, currentUncertainty, drop, dropUncertainty, degrees }: PoleReadings) => ({
  current: { value: current, u: currentUncertainty, degrees: degrees?.current ?? Infinity },
  drop: { value: drop, u: dropUncertainty, degrees: degrees?.drop ?? Infinity },
});

interface Told {
  readonly unit: Unit;
  readonly correlation: number;
  /** What each of the two values brings, in the order of the result's contributions. */
  readonly names: readonly [string, string];
}

/** The two contributions, their sum and the expanded uncertainty, with the numbers put in. */
export const propagationSteps = (result: Propagated, { unit, correlation, names }: Told): Step[] => {
  const [first, second] = result.contributions;
  const [r, a, b] = [correlation, first, second].map((value) => sayNumber(value));
  const [texR, texA, texB] = [correlation, first, second].map((value) => tex(value));
  return [
    {
      sentence: "What each of the two brings: how strongly it acts, times its standard uncertainty",
      tex: String.raw`c_1 u_1 = ${tex(first, unit)},\quad c_2 u_2 = ${tex(second, unit)}`,
      plain: `${names[0]} ${say(first, unit)}, ${names[1]} ${say(second, unit)}`,
    },
    correlation === 0
      ? {
          sentence: "They are independent, so the squares add",
          tex: String.raw`u = \sqrt{(${texA})^2 + (${texB})^2} = ${tex(result.u, unit)}`,
          plain: `u = √((${a})² + (${b})²) = ${say(result.u, unit)}`,
        }
      : {
          sentence: "They move together, so a cross term is added to the squares",
          tex: String.raw`u^2 = (${texA})^2 + (${texB})^2 + 2 \cdot (${texR}) \cdot (${texA}) \cdot (${texB}), \quad u = ${tex(result.u, unit)}`,
          plain: `u = √((${a})² + (${b})² + 2 × (${r}) × (${a}) × (${b})) = ${say(result.u, unit)}`,
        },
    factorStep(result, correlation),
    {
      sentence: "The expanded uncertainty, for about 95 %",
      tex: String.raw`U = k\,u = ${tex(result.k)} \cdot ${tex(result.u, unit)} = ${tex(result.expanded, unit)}`,
      plain: `U = ${sayNumber(result.k)} × ${say(result.u, unit)} = ${say(result.expanded, unit)}`,
    },
  ];
};

const factorStep = ({ degrees, k }: Propagated, correlation: number): Step => {
  if (degrees > 1e6)
    return {
      sentence: "Both uncertainties are well known, so the coverage factor is",
      tex: `k = ${k}`,
      plain: `k = ${k}`,
    };
  return {
    sentence:
      correlation === 0
        ? "The effective degrees of freedom (Welch and Satterthwaite, not rounded) and Student's t for 95 % at them"
        : "Correlated readings: the smaller of the two degrees of freedom, and Student's t for 95 % at it",
    tex: String.raw`\nu = ${tex(degrees)},\quad k = t_{0.975}(\nu) = ${tex(k)}`,
    plain: `ν = ${sayNumber(degrees)}, k = ${sayNumber(k)}`,
  };
};

/** The answer in words: value ± U, the value to the last place of U. */
export const propagationAnswer = (what: string, { value, expanded }: Propagated, unit: Unit): string => {
  const place = (x: number): number => Math.floor(Math.log10(x));
  const figures = expanded > 0 ? Math.min(15, Math.max(2, place(value) - place(expanded) + 2)) : 6;
  return `${what} ${say(value, unit, figures)} ± ${say(expanded, unit, 2)}, with a probability of about 95 %.`;
};
