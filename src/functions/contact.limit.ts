import { powerLossLimit, powerLossSource } from "../contact/iec60898";
import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";
import { recalledCaution } from "./accounts/cautions";
import { rating } from "./arguments/contact";

export default define({
  name: "CONTACT.LIMIT",
  summary: "The most heat that IEC 60898-1 lets one pole make at its rating, and the voltage drop that goes with it.",
  parameters: { rating },
  results: [
    { name: "limit", unit: "W", meaning: "largest power loss of one pole at the rating" },
    { name: "drop", unit: "V", meaning: "the voltage drop at the rating that makes this heat" },
  ],
  answers: "row",
  sources: [powerLossSource, { document: "Joule's law, ΔV = P ÷ I", standing: "handbook" }],
  cautions: [
    "The limit holds at the rating, warm and settled; a drop measured at another current or just after switching on is not comparable as it is.",
    "UL 489 and NEMA AB 4 print no limit: compare the poles of one breaker with each other, and ask its maker.",
    recalledCaution,
  ],
  examples: [
    {
      cells: [20],
      gives: [4.5, 0.225],
      worked: "IEC 60898-1 table (from memory): 4.5 W above 16 A up to 25 A; 4.5 ÷ 20 = 0.225",
    },
    {
      cells: [16],
      gives: [3.5, 0.21875],
      worked: "IEC 60898-1 table (from memory): 3.5 W up to 16 A; 3.5 ÷ 16 = 0.21875",
    },
    { cells: [125], gives: [20, 0.16], worked: "IEC 60898-1 table (from memory): 20 W up to 125 A; 20 ÷ 125 = 0.16" },
  ],
  calculate: ({ rating }) => {
    const watts = powerLossLimit(rating);
    return [watts, watts / rating];
  },
  explain: ({ rating }, [watts, drop]) => ({
    steps: [
      {
        sentence: `The table's row for ${say(rating, "A")} allows each pole`,
        tex: `P = ${tex(Number(watts), "W")}`,
        plain: `P = ${say(Number(watts), "W")}`,
      },
      {
        sentence: "At the rating this heat means a drop of",
        tex: String.raw`\Delta V = \frac{P}{I} = \frac{${tex(Number(watts), "W")}}{${tex(rating, "A")}} = ${tex(Number(drop), "V")}`,
        plain: `ΔV = P ÷ I = ${say(Number(watts), "W")} ÷ ${say(rating, "A")} = ${say(Number(drop), "V")}`,
      },
    ],
    answer: `A ${say(rating, "A")} pole may make ${say(Number(watts), "W")}, which is a drop of ${say(Number(drop), "V")} at its rating.`,
  }),
});
