import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { conformanceProbability, conformity, guard, type Tested } from "../metrology/conformity";
import { sayNumber } from "../metrology/say";
import { sayProbability } from "./accounts/probability";
import { lower, upper } from "./arguments/meter";
import { conformityPlot } from "./pictures/conformity";

/**
 * The question with its limits told apart from blank cells, which some hosts hand over as 0: a 0 that leaves no room between
 * the limits can only be a blank; a 0 that stands alone may be one, and is refused.
 */
const tested = (given: { value: number; u: number; lower: number | undefined; upper: number | undefined }): Tested => {
  const { value, u } = given;
  const [low, high] = [given.lower ?? -Infinity, given.upper ?? Infinity];
  if (value === 0) throw new BadInput("value: 0 is also what a blank cell counts as; type a measured zero as 1E-9.");
  if ((low === 0 || low === -Infinity) && (high === 0 || high === Infinity))
    throw new BadInput(
      "lower, upper: both limits are blank (a blank cell counts as 0 on some hosts; type a lone limit of zero as 1E-9).",
    );
  if (low === 0 && high < 0) return { value, u, lower: -Infinity, upper: high };
  if (high === 0 && low > 0) return { value, u, lower: low, upper: Infinity };
  if (low < high) return { value, u, lower: low, upper: high };
  throw new BadInput(
    `lower, upper: the lower limit ${sayNumber(low)} is not below the upper limit ${sayNumber(high)}.`,
  );
};

const between = ({ lower, upper }: Tested): string =>
  lower === -Infinity
    ? `up to ${sayNumber(upper, 6)}`
    : upper === Infinity
      ? `from ${sayNumber(lower, 6)} up`
      : `from ${sayNumber(lower, 6)} to ${sayNumber(upper, 6)}`;

const decided = {
  conforms: "it conforms, with more than the guard band to spare",
  "does not conform": "it does not conform, by more than the guard band",
  "too close to call": "it lies within the guard band, too close to call",
} as const;

export default define({
  name: "METER.CONFORMS",
  summary: "Whether a measured value meets its limits, given how uncertain the measurement is.",
  parameters: {
    value: quantity("", "the measured value", z.number()),
    u: quantity("", "its standard uncertainty, in the unit of the value"),
    lower,
    upper,
  },
  results: [
    { name: "probability", unit: "", meaning: "that the true value lies within the limits" },
    { name: "verdict", unit: "", meaning: "conforms, does not conform, or too close to call" },
  ],
  answers: "row",
  sources: [
    {
      document: "JCGM 106",
      edition: "2012",
      place: "7 (conformance probability), 8.3 (guard bands)",
      standing: "handbook",
    },
    { document: "ILAC-G8", edition: "2019", place: "guard band w = U", standing: "from memory" },
  ],
  cautions: [
    "The decision rule: a guard band of U = 2u on either side of a limit. At its edge the risk of a wrong decision is 2.3 %; on the limit itself it would be 50 %.",
    'On some hosts a blank cell is handed over as 0, and a limit that really is 0 cannot be told from it: type "none" for no limit.',
    "The measurement is all that is known here, and its error is taken as normal; what is known of the make or the batch is not used.",
    "A statement about one value and one limit, not a release to service.",
  ],
  examples: [
    {
      cells: [-5.47, 0.05, null, -5.4],
      gives: [0.9192433407662289, "too close to call"],
      worked:
        "JCGM 106, upper limit of a breakdown voltage: 0.92, more digits by another program; 0.07 inside is less than 2u = 0.1",
    },
    {
      cells: [509.7, 8.6, 490],
      gives: [0.9890095473848223, "conforms"],
      worked:
        "JCGM 106, lower limit of a burst strength: 0.99, more digits by another program; 19.7 inside is more than 2u = 17.2",
    },
    {
      cells: [13.6, 1.8, 12.5, 16.3],
      gives: [0.6626297864953078, "too close to call"],
      worked: "JCGM 106, viscosity between two limits: 0.66, more digits by another program",
    },
    {
      cells: [51, 0.5, "none", 50],
      gives: [0.022750131948179, "too close to call"],
      within: 1e-12,
      worked: "normal table: Φ(−2) = 0.02275; exactly 2u outside is the edge, not beyond it",
    },
  ],
  calculate: (given) => {
    const asked = tested(given);
    return [conformanceProbability(asked), conformity(asked)];
  },
  explain: (given, [probability, verdict]) => {
    const asked = tested(given);
    const { value, u, lower, upper } = asked;
    const band = guard * u;
    const side = (name: string, limit: number) => ({
      sentence: `The ${name} limit lies this many standard uncertainties from the value`,
      tex: String.raw`z = \frac{${tex(limit, "", 6)} - (${tex(value, "", 6)})}{${tex(u)}} = ${tex((limit - value) / u)}`,
      plain: `z = (${sayNumber(limit, 6)} − (${sayNumber(value, 6)})) ÷ ${sayNumber(u)} = ${sayNumber((limit - value) / u)}`,
    });
    const share = (limit: number) => String.raw`\Phi(${tex((limit - value) / u)})`;
    const above = upper === Infinity ? "1" : share(upper);
    const below = lower === -Infinity ? "0" : share(lower);
    const narrow = upper - lower < 2 * band;
    return {
      steps: [
        ...(lower === -Infinity ? [] : [side("lower", lower)]),
        ...(upper === Infinity ? [] : [side("upper", upper)]),
        {
          sentence: "The part of the normal distribution between the limits",
          tex: `p = ${above} - ${below} = ${tex(Number(probability))}`,
          plain: `p = ${sayNumber(Number(probability))}`,
        },
        {
          sentence: `With a guard band on either side of each limit, ${decided[verdict as keyof typeof decided]}`,
          tex: `U = 2u = ${tex(band)}`,
          plain: `U = 2u = ${sayNumber(band)}`,
        },
      ],
      answer: `${sayNumber(value, 6)} against limits ${between(asked)}: ${verdict} (probability ${sayProbability(Number(probability))}).`,
      cautions: narrow
        ? ["The limits lie closer together than 4u: no reading of this meter can be said to conform."]
        : [],
    };
  },
  plot: (given) => conformityPlot(tested(given)),
});
