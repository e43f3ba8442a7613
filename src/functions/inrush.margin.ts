import { z } from "zod";
import { define } from "../definition/define";
import { type Given, optional, quantity } from "../definition/parameter";
import type { Step } from "../definition/step";
import { tex } from "../definition/tex";
import { firstPeakFactor } from "../inrush/first-peak";
import { type Margin, startMargin } from "../inrush/margin";
import { say, sayNumber } from "../metrology/say";
import { injectionCaution, magneticCaution, polesCaution, rideThroughCaution } from "./accounts/cautions";
import { rangeCautions, rangeSources, rangeSteps } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { bandPlot } from "./pictures/trip-band";

const parameters = {
  startCurrent: quantity("A", "the current while the motor starts, r.m.s., measured or from its locked-rotor table"),
  startTime: quantity("s", "how long the start lasts"),
  runningCurrent: quantity("A", "the current once it runs, r.m.s."),
  rating,
  characteristic,
  powerFactor: optional(
    quantity("", "cos φ while it starts, 0 to 1", z.number().min(0).max(1), {
      hint: "a power factor in per cent is divided by 100",
    }),
    "the worst first peak, 2√2 times the start current",
  ),
  ...conditions,
} as const;

const peakSource = {
  document: "Handbook of Electrical Engineering",
  place: "eq. 11.5 (closing of an R–L circuit)",
  standing: "corroborated",
} as const;

export default define({
  name: "INRUSH.MARGIN",
  summary: "Whether a sound breaker rides through a motor start: four margins, each good above 1, and a verdict.",
  parameters,
  results: [
    { name: "running", unit: "", meaning: "hold edge ÷ running current" },
    {
      name: "thermal",
      unit: "",
      meaning:
        "shortest trip time of the strip at the start current ÷ start time; holds: it carries the start for ever",
    },
    {
      name: "magnetic",
      unit: "",
      meaning: "lower magnetic current ÷ start current, both r.m.s.; not known without a band",
    },
    {
      name: "peak",
      unit: "",
      meaning: "lower magnetic current × √2 ÷ first peak of the start; not known without a band",
    },
    { name: "verdict", unit: "", meaning: "rides through; may trip; trips; thermal rides through, magnetic not known" },
  ],
  answers: "row",
  sources: [...documents, peakSource],
  cautions: [
    rideThroughCaution,
    "The first peak is that of a linear circuit; iron that saturates can peak higher. A start hot from the last one is another start: give the preload.",
    magneticCaution,
    polesCaution,
    injectionCaution,
  ],
  examples: [
    {
      cells: [60, 0.4, 12, 20, "C", 0.5],
      gives: [22.6 / 12, 0.6812 / 0.4, 100 / 60, (100 * Math.SQRT2) / (1.694 * 60), "rides through"],
      within: 1e-3,
      worked:
        "by hand: 1.13 × 20 A ÷ 12 A; quickest strip at 3 × 0.6812 s ÷ 0.4 s; 5 × 20 A ÷ 60 A; √2 × 100 A ÷ (1.694 × 60 A), 1.694 being the first peak of cos φ 0.5",
    },
    {
      cells: [60, 50, 12, 20, "C", 0.5],
      gives: [22.6 / 12, 0.6812 / 50, 100 / 60, (100 * Math.SQRT2) / (1.694 * 60), "trips"],
      within: 1e-3,
      worked: "by hand: 50 s lies beyond the slowest sound strip at 3 ×, 41.99 s",
    },
    {
      cells: [60, 2, 12, 20, "UL 489 typical"],
      gives: [20 / 12, 3.7209 / 2, "not known", "not known", "thermal rides through, magnetic not known"],
      within: 1e-3,
      worked: "by hand: not before 10 s at 2 × means not before 10 × ln(9/7.1775) ÷ ln(4/2.1775) = 3.7209 s at 3 ×",
    },
  ],
  calculate: (given) => {
    const { running, thermal, magnetic, peak, verdict } = marginOf(given);
    return [
      running ?? "not known",
      Number.isFinite(thermal) ? thermal : "holds",
      magnetic ?? "not known",
      peak ?? "not known",
      verdict,
    ];
  },
  explain: (given) => {
    const asked = askedOf(given);
    const margin = marginOf(given);
    return {
      steps: [
        ...rangeSteps(asked, given.startCurrent, asked.rangeAt(given.startCurrent)),
        ...marginSteps(given, margin),
      ],
      answer: answerOf(margin),
      sources: [...rangeSources(asked), ...(margin.peak === undefined ? [] : [peakSource])],
      cautions: [
        ...rangeCautions(asked),
        ...(given.powerFactor === undefined && margin.peak !== undefined ? [worstPeakCaution] : []),
      ],
    };
  },
  plot: (given) => {
    const { startCurrent: x, startTime } = given;
    const name = `start: ${say(x, "A")} for ${say(startTime, "s")}`;
    const asked = askedOf(given);
    return bandPlot(asked, "The start against the band", {
      current: x,
      points: [{ name, role: "asked", x, y: Math.min(20000, Math.max(0.01, startTime)) }],
    });
  },
});

type Inputs = Given<typeof parameters>;

const worstPeakCaution =
  "No power factor was given, so the worst first peak is used: 2√2 times the start current, twice the steady crest.";

const marginOf = (given: Inputs): Margin => {
  const { startCurrent: current, startTime: seconds, runningCurrent: running, powerFactor } = given;
  return startMargin(askedOf(given), { current, seconds, running, powerFactor });
};

const marginSteps = ({ startCurrent, startTime, runningCurrent, powerFactor }: Inputs, margin: Margin): Step[] => {
  const factor = firstPeakFactor(powerFactor ?? 0);
  const lower = (margin.magnetic ?? 0) * startCurrent;
  const peakAt = powerFactor === undefined ? "at worst" : `at cos φ ${sayNumber(powerFactor)}`;
  return [
    ratio("Running margin: hold edge ÷ running current", margin.running, { of: runningCurrent, unit: "A" }),
    ratio("Thermal margin: shortest time of the strip ÷ start time", margin.thermal, { of: startTime, unit: "s" }),
    ratio("Magnetic margin: lower magnetic current ÷ start current", margin.magnetic, { of: startCurrent, unit: "A" }),
    margin.peak === undefined
      ? { sentence: "Peak margin: not known without a magnetic band" }
      : {
          sentence: `Peak margin: crest of the lower magnetic current ÷ first peak, ${sayNumber(factor)} × the start current ${peakAt}`,
          tex: String.raw`\frac{\sqrt2 \cdot ${tex(lower, "A")}}{${tex(factor)} \cdot ${tex(startCurrent, "A")}} = ${tex(margin.peak)}`,
          plain: `√2 × ${say(lower, "A")} ÷ (${sayNumber(factor)} × ${say(startCurrent, "A")}) = ${sayNumber(margin.peak)}`,
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

const answerOf = (margin: Margin): string => {
  const below = (["running", "thermal", "magnetic", "peak"] as const).filter((part) => (margin[part] ?? 1) < 1);
  const weak =
    below.length > 0 ? `; below 1: ${below.map((part) => `${part} ${sayNumber(margin[part] ?? 0)}`).join(", ")}` : "";
  return `A sound breaker ${margin.verdict.startsWith("thermal") ? `of this kind: ${margin.verdict}` : margin.verdict}${weak}.`;
};
