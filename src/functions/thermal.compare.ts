import * as z from "zod/mini";
import { define } from "../definition/define";
import { list, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { compared } from "../thermal/compare";
import { learning } from "../thermal/model";
import { verdictCaution } from "./accounts/cautions";

const times = (meaning: string) => list(quantity("s", meaning, z.number().check(z.positive(), z.maximum(1e9))));
const median = (seconds: readonly number[]): number =>
  Math.exp(seconds.reduce((sum, time) => sum + Math.log(time), 0) / seconds.length);

export default define({
  name: "THERMAL.COMPARE",
  summary:
    "Whether a breaker's trip times have changed: the ratio of the medians after to before, with its 95 % limits.",
  parameters: {
    timesBefore: times("trip times before: as found, or last year, all at one current and from the same start"),
    timesAfter: times("trip times after: exercised, or this year, at the same current and from the same start"),
  },
  results: [
    { name: "ratio", unit: "", meaning: "median after ÷ median before: below 1 is quicker" },
    { name: "low", unit: "", meaning: "lower 95 % limit; “not known” when no time differs from another of its list" },
    { name: "high", unit: "", meaning: "upper 95 % limit; a change shows when both limits lie on one side of 1" },
  ],
  answers: "row",
  sources: [
    {
      document: "Student's t interval of the difference of two means of ln t, one common scatter",
      standing: "handbook",
    },
    ...learning.slice(0, 1),
  ],
  cautions: [
    "Only times at one current, in the same air, from the same start: a repeat without rest is quicker by itself.",
    "No difference found is not no difference: with few times only large changes show.",
    verdictCaution,
  ],
  examples: [
    {
      cells: [
        [[41], [44], [39.5], [46]],
        [[36.2], [33.9], [38]],
      ],
      gives: [0.8459267464265421, 0.7455925302173232, 0.9597629151558379],
      worked: "scipy ttest_ind on ln t with equal variances and its confidence interval, exponentiated",
    },
    {
      cells: [52, [[36.2], [33.9], [38]]],
      gives: [0.6921931196914627, 0.5207070669833472, 0.9201551992063183],
      worked: "numpy and scipy.stats.t by the formula: one as-found time against three repeats, 2 degrees of freedom",
    },
  ],
  calculate: ({ timesBefore, timesAfter }) => {
    const { ratio, low, high } = compared(timesBefore, timesAfter);
    return [ratio, low, high];
  },
  explain: ({ timesBefore, timesAfter }, [, low = "", high = ""]) => {
    const { ratio, dof, scatter } = compared(timesBefore, timesAfter);
    const [before, after] = [median(timesBefore), median(timesAfter)];
    const clear = typeof low === "number" && typeof high === "number" && (low > 1 || high < 1);
    return {
      steps: [
        {
          sentence: "The medians are the geometric means of the times",
          tex: String.raw`\frac{\tilde t_2}{\tilde t_1} = \frac{${tex(after)}}{${tex(before)}} = ${tex(ratio)}`,
          plain: `${say(after, "s")} / ${say(before, "s")} = ${sayNumber(ratio)}`,
        },
        {
          sentence: `The scatter of ln t, taken as the same before and after, from ${timesBefore.length} and ${timesAfter.length} times`,
          plain: `s = ${sayNumber(scatter)} with ${dof} degrees of freedom`,
        },
        {
          sentence: "The limits, by Student's t for these degrees of freedom",
          ...(typeof low === "number" && typeof high === "number"
            ? {
                tex: String.raw`\frac{\tilde t_2}{\tilde t_1}\exp\left(\mp t_{0.975}\,s\sqrt{1/n_1 + 1/n_2}\right) = ${tex(low)}\ \text{and}\ ${tex(high)}`,
              }
            : {}),
          plain: `${say(low, "")} to ${say(high, "")}`,
        },
      ],
      answer: clear
        ? `The times have changed: after is ${sayNumber(ratio)} times before (${say(low, "")} to ${say(high, "")}).`
        : typeof low === "number"
          ? `No change is shown: the ratio ${sayNumber(ratio)} may be 1 (${say(low, "")} to ${say(high, "")}).`
          : `The ratio is ${sayNumber(ratio)}; times without scatter tell no limits.`,
    };
  },
});
