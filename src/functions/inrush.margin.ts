import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { type Given, optional, quantity, sheetName } from "../definition/parameter";
import { type FittedMargin, fittedMargin } from "../inrush/fitted-margin";
import { type Margin, type Start, startMargin } from "../inrush/margin";
import { say } from "../metrology/say";
import type { Fitted } from "../thermal/fitted";
import { injectionCaution, magneticCaution, polesCaution, rideThroughCaution } from "./accounts/cautions";
import { bandAccount, fitAccount, peakSource } from "./accounts/margin";
import { documents } from "./accounts/trip-sources";
import { characteristicOrFit, isFitted } from "./arguments/characteristic-or-fit";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { start } from "./arguments/inrush";
import { fitPicture } from "./pictures/fitted-start";
import { bandPlot } from "./pictures/trip-band";

const parameters = {
  ...start,
  rating,
  characteristic: characteristicOrFit,
  powerFactor: optional(
    quantity("", "cos φ while it starts, 0 to 1", z.number().check(z.minimum(0), z.maximum(1)), {
      hint: "a power factor in per cent is divided by 100",
    }),
    "the worst first peak, 2√2 times the start current",
  ),
  ...conditions,
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
    const { characteristic: kind } = given;
    return isFitted(kind)
      ? fitAccount(startOf(given), kind, marginOfFit(given, kind))
      : bandAccount(startOf(given), askedOf({ ...given, characteristic: kind }));
  },
  plot: (given) => {
    const { characteristic: kind, startCurrent: x, startTime } = given;
    const point = { name: `start: ${say(x, "A")} for ${say(startTime, "s")}`, role: "asked", x } as const;
    if (isFitted(kind)) return fitPicture(kind, { ...point, y: startTime });
    return bandPlot(askedOf({ ...given, characteristic: kind }), "The start against the band", {
      current: x,
      points: [{ ...point, y: startTime }],
    });
  },
});

type Inputs = Given<typeof parameters>;

const startOf = ({ startCurrent, startTime, runningCurrent, powerFactor }: Inputs): Start => ({
  current: startCurrent,
  seconds: startTime,
  running: runningCurrent,
  powerFactor,
});

const marginOf = (given: Inputs): Margin => {
  const { characteristic: kind } = given;
  return isFitted(kind)
    ? marginOfFit(given, kind)
    : startMargin(askedOf({ ...given, characteristic: kind }), startOf(given));
};

/** A fit holds for the air and the breaker it was taken from; of the conditions only a preload says something to it. */
const marginOfFit = (given: Inputs, fitted: Fitted): FittedMargin => {
  const other = (["ambient", "setting", "tripRise"] as const).find((condition) => given[condition] !== undefined);
  if (other)
    throw new BadInput(
      `${sheetName(other)}: a fit holds for the strip and the air of its own trials; leave it out, or ask by a characteristic.`,
    );
  const { preload = 0 } = given;
  if (preload >= fitted.pickup.value)
    throw new BadInput(
      `preload: less than the fitted pickup of ${say(fitted.pickup.value, "A")} is wanted, not ${say(preload, "A")}.`,
    );
  return fittedMargin(fitted, startOf(given), preload);
};
