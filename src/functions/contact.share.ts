import { powerLossLimit, powerLossSource } from "../contact/iec60898";
import { lossAtRating, shareOfLimit } from "../contact/share";
import { poleWatts } from "../contact/watts";
import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { exceeds } from "../metrology/exceeds";
import { say } from "../metrology/say";
import { dropCaution, hotLeadsCaution, recalledCaution } from "./accounts/cautions";
import { poleCurrent, poleDrop, rating } from "./arguments/contact";
import { millivoltsCaution } from "./arguments/millivolts";

export default define({
  name: "CONTACT.SHARE",
  summary: "How much of the power loss that IEC 60898-1 allows a pole uses, from a drop measured at any current.",
  parameters: { current: poleCurrent, drop: poleDrop, rating },
  results: [
    { name: "share", unit: "", meaning: "loss at the rating ÷ the limit; 1 is the limit" },
    { name: "loss at the rating", unit: "W", meaning: "the measured loss, scaled to the rating" },
    { name: "finding", unit: "", meaning: "within the limit, or above the limit" },
  ],
  answers: "row",
  sources: [
    powerLossSource,
    { document: "Joule's law, P = I²·R", place: "the same resistance at both currents", standing: "handbook" },
  ],
  cautions: [
    "The limit holds at the rating, warm and settled. Scaling from another current takes the resistance as unchanged, and a cold or lightly loaded pole differs.",
    "A pole above the limit is a reason to clean, exercise and measure again, not a verdict on the breaker by itself.",
    recalledCaution,
    hotLeadsCaution,
    dropCaution,
  ],
  examples: [
    {
      cells: [20, 0.16, 20],
      gives: [3.2 / 4.5, 3.2, "within the limit"],
      worked: "hand-worked: 20 A × 0.16 V = 3.2 W of the 4.5 W for 20 A (table from memory) = 0.7111",
    },
    {
      cells: [10, 0.13, 20],
      gives: [5.2 / 4.5, 5.2, "above the limit"],
      worked: "hand-worked: 10 A × 0.13 V = 1.3 W, at twice the current four times that = 5.2 W; ÷ 4.5 W = 1.1556",
    },
    {
      cells: [20, 0.225, 20],
      gives: [1, 4.5, "within the limit"],
      worked: "hand-worked: 20 A × 0.225 V = 4.5 W, exactly the limit",
    },
  ],
  calculate: (pole) => {
    const share = shareOfLimit(pole);
    return [share, lossAtRating(pole), exceeds(share, 1) ? "above the limit" : "within the limit"];
  },
  explain: ({ current, drop, rating }, [share, loss, finding]) => {
    const limit = powerLossLimit(rating);
    const measured = poleWatts(current, drop);
    const far = Math.abs(current / rating - 1) > 0.05;
    return {
      steps: [
        {
          sentence: "The heat as measured",
          tex: String.raw`P = I\,\Delta V = ${tex(current, "A")} \cdot ${tex(drop, "V")} = ${tex(measured, "W")}`,
          plain: `P = ${say(current, "A")} × ${say(drop, "V")} = ${say(measured, "W")}`,
        },
        {
          sentence: "Scaled to the rating with the square of the current",
          tex: String.raw`P_n = ${tex(measured, "W")} \left(\frac{${tex(rating)}}{${tex(current)}}\right)^2 = ${tex(Number(loss), "W")}`,
          plain: `Pn = ${say(measured, "W")} × (${say(rating, "A")} ÷ ${say(current, "A")})² = ${say(Number(loss), "W")}`,
        },
        {
          sentence: `The limit of IEC 60898-1 for ${say(rating, "A")} is ${say(limit, "W")} per pole`,
          tex: String.raw`\frac{${tex(Number(loss), "W")}}{${tex(limit, "W")}} = ${tex(Number(share))}`,
          plain: `${say(Number(loss), "W")} ÷ ${say(limit, "W")} = ${say(Number(share), "")}`,
        },
      ],
      answer: `The pole uses ${say(100 * Number(share), "%", 3)} of the power loss allowed at ${say(rating, "A")}: ${finding}.`,
      cautions: [
        ...millivoltsCaution(drop),
        ...(far
          ? [
              `Measured at ${say(current, "A")} and scaled to ${say(rating, "A")}: measure at the rating before you decide.`,
            ]
          : []),
      ],
    };
  },
});
