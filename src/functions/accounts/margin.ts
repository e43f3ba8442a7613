import type { Account } from "../../definition/define";
import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import { firstPeakFactor } from "../../inrush/first-peak";
import type { FittedMargin } from "../../inrush/fitted-margin";
import { type Margin, type Start, startMargin } from "../../inrush/margin";
import { say, sayNumber } from "../../metrology/say";
import type { Fitted } from "../../thermal/fitted";
import { thermalEquation } from "../../thermal/model";
import type { Asked } from "../../trip/asked";
import { rangeCautions, rangeSources, rangeSteps } from "./trip-range";

export const peakSource = {
  document: "Handbook of Electrical Engineering",
  place: "eq. 11.5 (closing of an R–L circuit)",
  standing: "corroborated",
} as const;

const fitSource = {
  document: "the trials of THERMAL.FIT, censored maximum likelihood",
  standing: "derived",
} as const;

const worstPeakCaution =
  "No power factor was given, so the worst first peak is used: 2√2 times the start current, twice the steady crest.";

/** Why a breaker known by its characteristic has these margins. */
export const bandAccount = (start: Start, asked: Asked): Account => {
  const margin = startMargin(asked, start);
  return {
    steps: [...rangeSteps(asked, start.current, asked.rangeAt(start.current)), ...marginSteps(start, margin)],
    answer: marginAnswer("A sound breaker of this kind", margin),
    sources: [...rangeSources(asked), ...(margin.peak === undefined ? [] : [peakSource])],
    cautions: [
      ...rangeCautions(asked),
      ...(start.powerFactor === undefined && margin.peak !== undefined ? [worstPeakCaution] : []),
    ],
  };
};

/** Why a breaker known by its own trials has these margins. */
export const fitAccount = (start: Start, fitted: Fitted, margin: FittedMargin): Account => {
  const { probability } = margin;
  return {
    steps: [
      {
        sentence:
          "One breaker's own strip: the pickup's lower 95 % limit carries the running current, the lower 95 % prediction limit of its trip time the start",
        plain: `${fitted.tripped} trips and ${fitted.held} holds; pickup ${say(fitted.pickup.value, "A")}, time constant ${say(fitted.timeConstant.value, "s")}`,
      },
      ...marginSteps(start, margin),
      {
        sentence:
          "The probability that the strip carries this start to its end, over all pickups that the trials leave open",
        plain: typeof probability === "number" ? say(probability, "") : probability,
      },
    ],
    answer: marginAnswer("This breaker", margin),
    sources: [thermalEquation, fitSource],
    cautions: ["The fit knows the strip only. Whether the magnetic release takes part at this current is not in it."],
  };
};

/** The four ratios with their quantities put in. */
const marginSteps = ({ current, seconds, running, powerFactor }: Start, margin: Margin): Step[] => {
  const factor = firstPeakFactor(powerFactor ?? 0);
  const lower = (margin.magnetic ?? 0) * current;
  const peakAt = powerFactor === undefined ? "at worst" : `at cos φ ${sayNumber(powerFactor)}`;
  return [
    ratio("Running margin: hold edge ÷ running current", margin.running, { of: running, unit: "A" }),
    ratio("Thermal margin: shortest time of the strip ÷ start time", margin.thermal, { of: seconds, unit: "s" }),
    ratio("Magnetic margin: lower magnetic current ÷ start current", margin.magnetic, { of: current, unit: "A" }),
    margin.peak === undefined
      ? { sentence: "Peak margin: not known without a magnetic band" }
      : {
          sentence: `Peak margin: crest of the lower magnetic current ÷ first peak, ${sayNumber(factor)} × the start current ${peakAt}`,
          tex: String.raw`\frac{\sqrt2 \cdot ${tex(lower, "A")}}{${tex(factor)} \cdot ${tex(current, "A")}} = ${tex(margin.peak)}`,
          plain: `√2 × ${say(lower, "A")} ÷ (${sayNumber(factor)} × ${say(current, "A")}) = ${sayNumber(margin.peak)}`,
        },
  ];
};

/** One margin as its two quantities; the upper one is the ratio times the lower. */
const ratio = (sentence: string, value: number | undefined, bottom: { of: number; unit: "A" | "s" }): Step => {
  if (value === undefined) return { sentence: `${sentence}: not known from what was given` };
  if (!Number.isFinite(value)) return { sentence: `${sentence}: carried for ever` };
  const top = value * bottom.of;
  return {
    sentence,
    tex: String.raw`\frac{${tex(top, bottom.unit)}}{${tex(bottom.of, bottom.unit)}} = ${tex(value)}`,
    plain: `${say(top, bottom.unit)} ÷ ${say(bottom.of, bottom.unit)} = ${sayNumber(value)}`,
  };
};

/** The verdict in words, with what keeps it from being better. */
const marginAnswer = (who: string, margin: Margin): string => {
  const below = (["running", "thermal", "magnetic", "peak"] as const).filter((part) => (margin[part] ?? 1) < 1);
  const weak =
    below.length > 0 ? `; below 1: ${below.map((part) => `${part} ${sayNumber(margin[part] ?? 0)}`).join(", ")}` : "";
  // "thermal rides through, magnetic not known" is no verb to a breaker.
  return `${who}${margin.verdict.startsWith("thermal") ? ":" : ""} ${margin.verdict}${weak}.`;
};
