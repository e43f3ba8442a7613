import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { list, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { repeatsOf } from "../metrology/repeats";
import { sayNumber } from "../metrology/say";

/**
 * Some hosts hand a blank cell over as 0. Where all other readings lie well away from 0, on one side of it and closer to each
 * other than to it, a 0 among them is such a blank and would ruin the mean.
 */
const strayZero = (readings: readonly number[]): boolean => {
  const others = readings.filter((reading) => reading !== 0).map(Math.abs);
  if (others.length === readings.length || others.length === 0) return false;
  const oneSided = readings.every((reading) => reading >= 0) || readings.every((reading) => reading <= 0);
  return oneSided && Math.min(...others) > Math.max(...others) / 2;
};

export default define({
  name: "METER.REPEATS",
  summary: "What repeated readings of the same thing tell: their mean and how well it is known.",
  parameters: {
    readings: list(
      quantity(
        "",
        "the repeated readings; of trip times their logarithms, LN(times), since they scatter by ratios",
        z.number(),
      ),
    ),
  },
  results: [
    { name: "mean", unit: "", meaning: "arithmetic mean, in the unit of the readings" },
    { name: "s", unit: "", meaning: "experimental standard deviation of one reading" },
    { name: "u", unit: "", meaning: "standard uncertainty of the mean, s ÷ √n" },
    { name: "degrees of freedom", unit: "", meaning: "n − 1" },
  ],
  answers: "row",
  sources: [{ document: "JCGM 100", edition: "2008", place: "4.2 (type A evaluation)", standing: "handbook" }],
  cautions: [
    "Repeats show scatter only: an error of the meter that is the same each time is not in it. Combine it with METER.ERROR.",
    "Readings must be independent: a second shot on a warm breaker is not a repeat of the first.",
    "For trip times hand over LN(times): EXP(mean) is then the median time, and s says by which ratio the times scatter.",
  ],
  examples: [
    {
      cells: [[[5.007], [4.994], [5.005], [4.99], [4.999]]],
      gives: [4.999, 0.0071763500472, 0.0032093613072, 4],
      worked: "JCGM 100, H.2: mean 4.9990 V, u = 0.0032 V of five readings; more digits by another program",
    },
    {
      cells: [[[1, 2, 3]]],
      gives: [2, 1, 1 / Math.sqrt(3), 2],
      worked: "hand-worked: the squares 1 + 0 + 1 over n − 1 = 2 give s = 1, u = 1 ÷ √3",
    },
  ],
  calculate: ({ readings }) => {
    if (readings.length < 2) throw new BadInput("readings: at least two are wanted, one alone shows no scatter.");
    if (strayZero(readings))
      throw new BadInput(
        "readings: one is 0 while the others are far from it; a blank cell counts as 0 on some hosts, so leave blank cells out of the range.",
      );
    const { mean, s, u, degrees } = repeatsOf(readings);
    return [mean, s, u, degrees];
  },
  explain: ({ readings }, [mean, s, u, degrees]) => {
    const n = readings.length;
    return {
      steps: [
        {
          sentence: `The mean of ${n} readings`,
          tex: String.raw`\bar x = \frac{1}{${n}}\sum x_i = ${tex(Number(mean), "", 6)}`,
          plain: `mean = ${sayNumber(Number(mean), 6)}`,
        },
        {
          sentence: "How far a single reading scatters",
          tex: String.raw`s = \sqrt{\sum (x_i - \bar x)^2 / (${n} - 1)} = ${tex(Number(s))}`,
          plain: `s = √(Σ(x − mean)² ÷ ${n - 1}) = ${sayNumber(Number(s))}`,
        },
        {
          sentence: "How far the mean does",
          tex: String.raw`u = \frac{s}{\sqrt{${n}}} = ${tex(Number(u))}`,
          plain: `u = ${sayNumber(Number(s))} ÷ √${n} = ${sayNumber(Number(u))}`,
        },
      ],
      answer: `Mean ${sayNumber(Number(mean), 6)} with standard uncertainty ${sayNumber(Number(u))} from ${n} readings (${degrees} degrees of freedom).`,
      cautions: readings.includes(0) ? ["A reading is exactly 0: a blank cell counts as 0 on some hosts."] : [],
    };
  },
});
