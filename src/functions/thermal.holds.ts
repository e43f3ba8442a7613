import * as z from "zod/mini";
import type { Range } from "../definition/cells";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { holdProbability } from "../thermal/forecast";
import { learning, thermalEquation } from "../thermal/model";
import { ammeterCaution, verdictCaution } from "./accounts/cautions";
import { nearPickup } from "./accounts/fit";
import { sayProbability } from "./accounts/probability";
import { preload, preloadBelow, testCurrent } from "./arguments/body";
import { fit } from "./arguments/fit";
import { trialsPicture } from "./pictures/trials";

/** A fit made up for hand work: its profile is one single pickup of 20 A with 100 s. */
const onePickup: Range = [
  ["pickup", 20, 0.5, 19, 21, ""],
  ["time constant", 100, 5, 90, 110, ""],
  ["scatter", 0.1, 0.02, 0.06, 0.2, ""],
  ["tripped", 10, "", "", "", ""],
  ["held", 0, "", "", "", ""],
  ["left out", 0, "", "", "", ""],
  ["log-likelihood", 8, "", "", "", ""],
  ["pinned", false, "", "", "", ""],
  ["covariance of ln pickup", "not known", "", "", "", ""],
  ["profile", 20, 0, 100, 0.1, 0.03],
];

export default define({
  name: "THERMAL.HOLDS",
  summary: "How likely a fitted breaker is to carry a current for a while without tripping thermally.",
  parameters: {
    current: testCurrent("the steady current, r.m.s."),
    time: quantity("s", "how long it should hold", z.number().check(z.positive(), z.maximum(1e9))),
    fit,
    preload,
  },
  results: [
    {
      name: "probability",
      unit: "",
      meaning:
        "0 to 1, thermal only: 1 for no current above the pickup's lower limit; “not known” where the trials set no such limit",
    },
  ],
  answers: "row",
  sources: [thermalEquation, ...learning],
  cautions: [
    "The thermal trip only: the probability says nothing of the magnetic release, which may trip at the first peak.",
    "Told from the trials alone: another air temperature, other leads or a warm start change it.",
    ammeterCaution,
    verdictCaution,
  ],
  examples: [
    {
      cells: [40, 28.768207245178093, onePickup],
      gives: [0.5],
      worked: "hand-worked: with one pickup left the median time is 100 s × ln(4/3), before which half the trials trip",
    },
    { cells: [19, 36000, onePickup], gives: [1], worked: "by definition: not above the pickup's lower limit" },
    {
      cells: [40, 23.43, onePickup],
      gives: [0.9524799122012801],
      worked:
        "hand-worked with scipy 1.10 for Student's t: z = ln(23.43/28.7682)/√((10/9)·(0.1² + 0.03²)) = −1.86509, 1 − T₉(z)",
    },
  ],
  calculate: ({ current, time, fit, preload }) => [
    holdProbability(fit, { current, preload: preloadBelow(fit.pickup.value, preload) }, time),
  ],
  explain: ({ current, time, fit, preload = 0 }, [probability = ""]) => {
    const { low, high, value } = fit.pickup;
    const asked = `${say(current, "A")} for ${say(time, "s")}${preload > 0 ? `, warm from ${say(preload, "A")}` : ""}`;
    const limits = {
      sentence: "The pickup, as the trials tell it, with its 95 % limits",
      plain: `${say(value, "A")}: ${say(low, "A")} to ${say(high, "A")}`,
    };
    if (typeof probability !== "number")
      return {
        steps: [limits],
        answer: `Whether it holds ${asked} is not known: the trials set no lower limit to the pickup.`,
      };
    if (probability === 1)
      return {
        steps: [
          limits,
          { sentence: "The current is not above the lower limit", plain: `${say(current, "A")} ≤ ${say(low, "A")}` },
        ],
        answer: `By these trials it holds ${asked}, and for ever: the current is not above the lower limit of the pickup.`,
        cautions: ["The lower limit of the pickup is a 95 % limit: of forty such fits one has its pickup below it."],
      };
    return {
      steps: [
        limits,
        {
          sentence:
            "For every pickup that the trials leave open, the share of trials still holding at that time, by its own time constant and scatter; mixed by the weight that the likelihood profile gives each pickup",
          tex: String.raw`P = \int \left(1 - T_{n-1}\!\left(\frac{\ln t - \ln t(I;\,I_p)}{s(I_p)}\right)\right) \mathrm{d}C(I_p)`,
          plain: `P: ${sayProbability(probability)}`,
        },
        ...nearPickup(fit, { current, preload }),
      ],
      answer: `It holds ${asked} with a probability of ${sayProbability(probability)}.`,
      cautions:
        probability > 0.99
          ? ["Above the pickup's lower limit no current is sure to be carried, however likely it looks."]
          : [],
    };
  },
  plot: ({ current, time, fit, preload = 0 }) =>
    preload > 0
      ? undefined
      : {
          ...trialsPicture(fit, [{ current, seconds: time, held: true, preload: 0 }]),
          title: "The question against the forecast",
          points: [{ name: `${say(current, "A")} for ${say(time, "s")}`, role: "asked", x: current, y: time }],
        },
});
