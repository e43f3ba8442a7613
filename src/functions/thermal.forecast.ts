import * as z from "zod/mini";
import type { Range } from "../definition/cells";
import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { forecast } from "../thermal/forecast";
import { learning, thermalEquation, thermalOnly } from "../thermal/model";
import { verdictCaution } from "./accounts/cautions";
import { nearPickup } from "./accounts/fit";
import { preload, preloadBelow, testCurrent } from "./arguments/body";
import { fit } from "./arguments/fit";
import { trialsPicture } from "./pictures/trials";

/** Estimates and covariance of ten trips, hot and cold: mpmath 1.2 at 50 digits. */
const tenTrips: Range = [
  ["pickup", 18.94097231980388, 0.01902167846, 18.8738547, 18.9763013, ""],
  ["time constant", 132.8185596030681, 3.57426882949, 124.00726, 142.504359, ""],
  ["scatter", 0.07523103880815539, 0.0168221716793, 0.0488226, 0.1379095, ""],
  ["tripped", 10, "", "", "", ""],
  ["held", 0, "", "", "", ""],
  ["left out", 0, "", "", "", ""],
  ["log-likelihood", 11.68252849871115, "", "", "", ""],
  ["pinned", false, "", "", "", ""],
  ["covariance of ln pickup", 1.008540013995315e-6, -1.2632403787479371e-5, 0, "", ""],
  ["covariance of ln time constant", -1.2632403787479371e-5, 0.0007241972900508112, 0, "", ""],
  ["covariance of ln scatter", 0, 0, 0.05, "", ""],
];

export default define({
  name: "THERMAL.FORECAST",
  summary:
    "When the next trial of a fitted breaker will trip at a current: the median and the limits between which it falls.",
  parameters: {
    current: testCurrent("the steady current of the next trial, r.m.s."),
    fit,
    confidence: optional(
      quantity(
        "",
        "how sure the limits are to hold the next time, 0.95 for 95 %",
        z.number().check(z.minimum(0.5), z.maximum(0.99)),
      ),
      "0.95",
    ),
    preload,
  },
  results: [
    { name: "low", unit: "s", meaning: "lower limit, thermal only; “holds” where it need never trip" },
    { name: "median", unit: "s", meaning: "as likely earlier as later, thermal only; “holds” at or below the pickup" },
    { name: "high", unit: "s", meaning: "upper limit, thermal only; “no limit” where it may hold for ever" },
  ],
  answers: "row",
  sources: [thermalEquation, ...learning],
  cautions: [
    thermalOnly,
    "A forecast for this breaker in the air, on the leads and in the state in which its trials were made, rested or preloaded as said.",
    verdictCaution,
  ],
  examples: [
    {
      cells: [24, tenTrips],
      gives: [105.52812807375888, 129.51229631394696, 158.94752614950028],
      within: 1e-8,
      worked: "mpmath 1.2, 50 digits: median × exp(∓ t·√(n/(n − 2))·√(σ² + g′Vg)), t = 2.306 for 8 degrees of freedom",
    },
    {
      cells: [24, tenTrips, 0.95, 16],
      gives: [41.963091052141095, 51.44331812775625, 63.06530128357897],
      within: 1e-8,
      worked: "mpmath 1.2, 50 digits, warm from 16 A",
    },
  ],
  calculate: ({ current, fit, confidence, preload }) => {
    const shot = { current, preload: preloadBelow(fit.pickup.value, preload) };
    const { low, median, high } = forecast(fit, shot, confidence);
    return [low, median, high];
  },
  explain: ({ current, fit, confidence = 0.95, preload = 0 }, [low = "", median = "", high = ""]) => {
    const { from } = forecast(fit, { current, preload }, confidence);
    const percent = `${sayNumber(100 * confidence, 3)} %`;
    const { pickup, timeConstant } = fit;
    return {
      steps: [
        typeof median === "number"
          ? {
              sentence: "The fitted strip takes",
              tex: String.raw`t = \tau\ln\frac{I^2 - I_0^2}{I^2 - I_p^2} = ${tex(timeConstant.value)}\cdot\ln\frac{${tex(current ** 2 - preload ** 2)}}{${tex((current - pickup.value) * (current + pickup.value))}} = ${tex(median, "s")}`,
              plain: `t = ${say(timeConstant.value, "s")} × ln(${sayNumber(current ** 2 - preload ** 2)} / ${sayNumber((current - pickup.value) * (current + pickup.value))}) = ${say(median, "s")}`,
            }
          : {
              sentence: "The current is not above the likeliest pickup",
              plain: `${say(current, "A")} ≤ ${say(pickup.value, "A")}`,
            },
        from === "standard errors" && typeof low === "number" && typeof high === "number"
          ? scatterStep(low, high)
          : limitsStep[from],
        ...nearPickup(fit, { current, preload }),
      ],
      answer:
        from === "nothing"
          ? `About ${say(median, "s")} at ${say(current, "A")}; the trials do not tell how far the next time may lie from it.`
          : `The next trial at ${say(current, "A")}${preload > 0 ? `, warm from ${say(preload, "A")},` : ""}: median ${say(median, "s")}; with ${percent} confidence not before ${say(low, "s")} and ${high === "no limit" ? "perhaps never" : `by ${say(high, "s")}`}.`,
    };
  },
  plot: ({ current, fit, preload = 0 }, [low = "", median = "", high = ""]) => {
    if (preload > 0) return undefined;
    const seen = [low, median, high].filter((time) => typeof time === "number" && time > 0);
    if (seen.length === 0) return undefined;
    const picture = trialsPicture(
      fit,
      seen.map((seconds) => ({ current, seconds: Number(seconds), held: false, preload: 0 })),
    );
    const points =
      typeof median === "number"
        ? [
            {
              name: `median ${say(median, "s")} at ${say(current, "A")}`,
              role: "asked" as const,
              x: current,
              y: median,
            },
          ]
        : [];
    return { ...picture, title: "The next trial", points };
  },
});

const scatterStep = (low: number, high: number) => ({
  ...limitsStep["standard errors"],
  tex: String.raw`${limitsStep["standard errors"].tex} = ${tex(low, "s")}\ \text{and}\ ${tex(high, "s")}`,
});

const limitsStep = {
  "standard errors": {
    sentence:
      "The next time scatters about it as the trials did, and the curve itself is only known as well as the trials tell it",
    tex: String.raw`t \cdot \exp\left(\mp\, t_{n-2}\sqrt{n/(n-2)}\,\sqrt{\sigma^2 + g' V g}\right)`,
    plain: "low, high = t × exp(∓ t(n−2)·√(n/(n−2))·√(σ² + g′Vg))",
  },
  profile: {
    sentence:
      "Here the pickup's own limits decide: the forecast is taken over every pickup that the trials leave open, each with its time constant and scatter, weighed by the likelihood profile",
    plain: "low, high: where the mixed probability of a trip reaches the tails",
  },
  nothing: {
    sentence: "Too few trips, or trips without scatter, tell no limits",
    plain: "low, high: not known",
  },
} as const;
