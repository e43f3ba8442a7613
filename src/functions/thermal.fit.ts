import { define } from "../definition/define";
import { type Given, optional, quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { fittedTo } from "../thermal/fit";
import { learning, thermalEquation } from "../thermal/model";
import { ammeterCaution, injectionCaution, verdictCaution } from "./accounts/cautions";
import { fitCautions, fitSteps, noteOn } from "./accounts/fit";
import { magneticDocuments } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf } from "./arguments/conditions";
import { blockOf } from "./arguments/fit-block";
import { currents, outcomes, preloads, times, trialsOf } from "./arguments/trials";
import { trialsPicture } from "./pictures/trials";

const parameters = {
  currents,
  times,
  outcomes,
  preloads,
  rating: optional(quantity("A", "the breaker's rated current"), "not needed but with a characteristic"),
  characteristic: optional(characteristic, "magnetic trips are told by their time alone"),
  setting: optional(quantity("A", "the marked instantaneous setting of the magnetic release, in amperes"), "not known"),
} as const;

const fitSources = [thermalEquation, ...learning];

const learned = (given: Given<typeof parameters>) => {
  const { trials, leftOut } = trialsOf(given);
  return { trials, fitted: fittedTo(trials, { leftOut, rating: given.rating }) };
};

/** By the list of currents, which each call makes anew: answer, explanation and picture of one call rest on one fit. */
const fits = new WeakMap<readonly number[], ReturnType<typeof learned>>();

const learn = (given: Given<typeof parameters>): ReturnType<typeof learned> => {
  const fit = fits.get(given.currents) ?? learned(given);
  fits.set(given.currents, fit);
  return fit;
};

export default define({
  name: "THERMAL.FIT",
  summary:
    "One breaker's own pickup, time constant and scatter from its log of trials, also those in which it held, with honest intervals.",
  parameters,
  results: [
    {
      name: "row",
      unit: "",
      meaning:
        "what stands in the row: pickup (A), time constant (s), scatter (of ln t), counts, log-likelihood, covariance, profile",
    },
    { name: "value", unit: "", meaning: "the likeliest value, or the count" },
    {
      name: "standard error",
      unit: "",
      meaning: "from the curvature at the top; “not known” where the top is not round",
    },
    {
      name: "low",
      unit: "",
      meaning: "lower 95 % limit from the likelihood profile; “no limit” where the trials set none",
    },
    {
      name: "high",
      unit: "",
      meaning: "upper 95 % limit; “no limit” where the trials set none, “not known” with too few trips",
    },
    { name: "note", unit: "", meaning: "the unit, and what to know of the row" },
  ],
  answers: "rows",
  sources: [...fitSources, ...magneticDocuments],
  cautions: [
    "The block fills six columns and up to 42 rows: leave them free. THERMAL.FORECAST, THERMAL.HOLDS and INRUSH.MARGIN take it whole.",
    "Every trial starts cold, or warm from a long steady preload that is given. A repeat without rest spoils the fit: it trips early and pulls the time constant down.",
    "The trials tell of this breaker, in this air and on these leads, as it is now.",
    "Near the pickup 1 % of current is 8 % of time or more: an error of the current setting shows as scatter.",
    ammeterCaution,
    verdictCaution,
    injectionCaution,
  ],
  examples: [
    {
      cells: [
        [[30], [30], [40], [40], [51], [51], [80], [80], [25], [25], [22.6]],
        [[125], [118], [49.4], [56.4], [28.8], [30.6], [10.5], [10.6], [600], [600], [3600]],
        [
          ["tripped"],
          ["tripped"],
          ["tripped"],
          ["tripped"],
          ["tripped"],
          ["tripped"],
          ["tripped"],
          ["tripped"],
          ["held"],
          ["held"],
          ["held"],
        ],
      ],
      gives: [
        ["pickup", 24.982856318251628, 0.04208514556554232, 24.9468438, 26.1724249],
        ["time constant", 105.09169000569732, 1.7752983996336908, 91.6202466, 110.019853],
        ["scatter", 0.04539823953256914, 0.011362168603270485],
        ["scatter of one trial", 0.052421371],
        ["tripped", 8],
        ["held", 3],
        ["left out", 0],
        ["log-likelihood", 13.376822339463198],
      ],
      within: 1e-7,
      worked:
        "maximum likelihood with mpmath 1.2 at 50 digits, also R 4.2 survreg with an offset; limits from a dense profile in Python; 0.04539824 × √(8/6)",
    },
  ],
  calculate: (given) => {
    const { fitted } = learn(given);
    return blockOf(fitted, noteOn(fitted));
  },
  explain: (given) => {
    const { trials, fitted } = learn(given);
    const { pickup, timeConstant } = fitted;
    const limits =
      typeof pickup.low === "number" && typeof pickup.high === "number"
        ? `between ${say(pickup.low, "A")} and ${say(pickup.high, "A")} (95 %)`
        : typeof pickup.high === "number"
          ? `at most ${say(pickup.high, "A")} (95 %), without a lower limit`
          : "its limits not known";
    return {
      steps: fitSteps(fitted),
      answer: `The breaker's pickup is ${say(pickup.value, "A")}, ${limits}; its time constant ${say(timeConstant.value, "s")}.`,
      sources: given.characteristic || given.setting ? [...fitSources, ...magneticDocuments] : fitSources,
      cautions: fitCautions(fitted, trials),
    };
  },
  plot: (given) => {
    const { trials, fitted } = learn(given);
    const { rating, characteristic, setting } = given;
    const asked = rating && characteristic ? askedOf({ rating, characteristic, setting }) : undefined;
    return trialsPicture(fitted, trials, asked);
  },
});
