import * as z from "zod/mini";
import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { wayWatts } from "../enclosure/watts";
import { say } from "../metrology/say";
import { exchangedCaution } from "./accounts/exchanged";
import { load, lossAtRating, poles, rating } from "./arguments/enclosure";

export default define({
  name: "ENCLOSURE.WATTS",
  summary: "The heat a way makes at the load it carries, from its loss at the rated current.",
  parameters: {
    lossAtRating,
    rating,
    load,
    poles: optional(poles, "1 pole"),
    fixedLossShare: optional(
      quantity(
        "",
        "the part of the loss that does not follow the current (a coil, electronics), 0 to 1",
        z.number().check(z.minimum(0), z.maximum(1)),
      ),
      "0, all of the loss grows with the square of the current",
    ),
  },
  results: [{ name: "heat", unit: "W", meaning: "heat of all poles of the way at its load" }],
  answers: "row",
  sources: [{ document: "Joule's law, P = I²·R", place: "the same resistance at both currents", standing: "handbook" }],
  cautions: [
    "The loss is that of one pole; poles that carry no current (an unloaded neutral) are not counted.",
    "A loss measured cold is too low: measure the drop warm and settled at the rating.",
    "Harmonic currents load the neutral and heat more than their r.m.s. sum of the phases suggests.",
  ],
  examples: [
    {
      cells: [3.5, 16, 8],
      gives: [0.875],
      worked: "hand-worked: half the current, a quarter of the loss, 3.5 W ÷ 4 = 0.875 W",
    },
    { cells: [4.5, 20, 20, 3], gives: [13.5], worked: "hand-worked: three poles of 4.5 W at full load" },
    {
      cells: [4, 20, 10, 1, 0.25],
      gives: [1.75],
      worked: "hand-worked: 4 W × (0.25 + 0.75 × 0.25) = 1 W + 0.75 W",
    },
  ],
  calculate: ({ poles = 1, fixedLossShare, ...way }) => [wayWatts({ ...way, poles, fixedShare: fixedLossShare })],
  explain: ({ lossAtRating, rating, load, poles = 1, fixedLossShare = 0 }, [answer]) => {
    const watts = say(Number(answer), "W");
    const share = say(load / rating, "×");
    return {
      steps: [
        {
          sentence: "The load as a part of the rating",
          tex: String.raw`\frac{I}{I_n} = \frac{${tex(load, "A")}}{${tex(rating, "A")}} = ${tex(load / rating)}`,
          plain: `I ÷ In = ${say(load, "A")} ÷ ${say(rating, "A")} = ${share}`,
        },
        fixedLossShare === 0
          ? {
              sentence: "The resistance stays, so the loss goes with the square of the current",
              tex: String.raw`P = n\,P_n\left(\frac{I}{I_n}\right)^2 = ${poles}\cdot ${tex(lossAtRating)}\cdot ${tex(load / rating)}^2 = ${tex(Number(answer), "W")}`,
              plain: `P = ${poles} × ${say(lossAtRating, "W")} × (${share})² = ${watts}`,
            }
          : {
              sentence: "One share of the loss is always there, the other goes with the square of the current",
              tex: String.raw`P = n\,P_n\left(s + (1-s)\left(\frac{I}{I_n}\right)^2\right) = ${poles}\cdot ${tex(lossAtRating)}\left(${tex(fixedLossShare)} + ${tex(1 - fixedLossShare)}\cdot ${tex(load / rating)}^2\right) = ${tex(Number(answer), "W")}`,
              plain: `P = ${poles} × ${say(lossAtRating, "W")} × (${fixedLossShare} + ${say(1 - fixedLossShare, "")} × (${share})²) = ${watts}`,
            },
      ],
      answer: `The way makes ${watts} of heat at ${say(load, "A")}.`,
      cautions: [
        ...exchangedCaution([{ lossAtRating, rating }]),
        ...(load > rating
          ? [
              `The load of ${say(load, "A")} is above the rating of ${say(rating, "A")}: an overload, not a steady state.`,
            ]
          : []),
      ],
    };
  },
});
