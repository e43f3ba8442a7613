import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { errorLimit, rectangular } from "../metrology/meter-error";
import { sayNumber } from "../metrology/say";
import { reading } from "./arguments/meter";

export default define({
  name: "METER.ERROR",
  summary: "How far a meter's reading may be off by its accuracy statement, and the standard uncertainty that follows.",
  parameters: {
    reading,
    percent: quantity(
      "%",
      "the per cent of the reading in the statement: type 1 for 1 %, not a cell that shows 1 %",
      z.number().check(z.nonnegative(), z.maximum(100)),
    ),
    counts: quantity("", "the counts (digits) in the statement", z.number().check(z.nonnegative())),
    resolution: quantity(
      "",
      "what one count is worth on the range used, in the unit of the reading",
      z.number().check(z.nonnegative()),
    ),
  },
  results: [
    { name: "limit of error", unit: "", meaning: "the reading is off by no more than this, in its own unit" },
    { name: "standard uncertainty", unit: "", meaning: "limit ÷ √3, in the unit of the reading" },
  ],
  answers: "row",
  sources: [
    { document: "JCGM 100", edition: "2008", place: "4.3.7 (rectangular distribution)", standing: "handbook" },
    { document: "Accuracy statement ±(% of reading + counts)", standing: "common practice, no source" },
  ],
  cautions: [
    "A cell formatted as per cent that shows 1 % holds 0.01: the statement's number itself is wanted.",
    "The statement holds for a year or so after adjustment, at 18 to 28 °C, inside the stated frequency band (common practice, no source); read the meter's own.",
    "Where the maker states a coverage (95 %, k = 2) divide the limit by that k instead of √3.",
    "A meter that is not true-r.m.s. is far more wrong than this on anything but a sine.",
  ],
  examples: [
    {
      cells: [100, 1, 2, 0.1],
      gives: [1.2, 1.2 / Math.sqrt(3)],
      worked: "hand-worked: 1 % of 100.0 V + 2 × 0.1 V = 1.2 V (98.8 to 101.2 V); ÷ √3 = 0.693 V",
    },
    {
      cells: [16.02, 1.5, 3, 0.01],
      gives: [0.2703, 0.15605777776],
      worked: "another program: 1.5 % × 16.02 A + 3 × 0.01 A = 0.2703 A; ÷ √3 = 0.15605777776 A",
    },
  ],
  calculate: (meter) => {
    const limit = errorLimit(meter);
    if (limit === 0)
      throw new BadInput("percent and counts: the statement adds up to 0, and no meter is without error.");
    return [limit, rectangular(limit)];
  },
  explain: ({ reading, percent, counts, resolution }, [limit, u]) => ({
    steps: [
      {
        sentence: "The per cent of the reading and the counts add up",
        tex: String.raw`a = ${tex(percent, "%")} \cdot ${tex(Math.abs(reading), "", 6)} + ${tex(counts)} \cdot ${tex(resolution)} = ${tex(Number(limit))}`,
        plain: `a = ${sayNumber(percent)} % × ${sayNumber(Math.abs(reading), 6)} + ${sayNumber(counts)} × ${sayNumber(resolution)} = ${sayNumber(Number(limit))}`,
      },
      {
        sentence: "Anything within the limit is taken as equally likely",
        tex: String.raw`u = \frac{a}{\sqrt3} = ${tex(Number(u))}`,
        plain: `u = ${sayNumber(Number(limit))} ÷ √3 = ${sayNumber(Number(u))}`,
      },
    ],
    answer: `The true value lies between ${sayNumber(reading - Number(limit), 6)} and ${sayNumber(reading + Number(limit), 6)} if the meter keeps its statement.`,
    cautions:
      percent > 0 && percent < 0.02
        ? [`${sayNumber(percent)} % of the reading was used: a cell that shows 1 % holds 0.01.`]
        : [],
  }),
});
