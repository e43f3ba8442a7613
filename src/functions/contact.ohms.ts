import { poleOhms } from "../contact/ohms";
import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";
import { dropCaution, hotLeadsCaution } from "./accounts/cautions";
import { poleCurrent, poleDrop } from "./arguments/contact";
import { millivoltsCaution } from "./arguments/millivolts";

export default define({
  name: "CONTACT.OHMS",
  summary: "The resistance of a pole: the voltage drop across it divided by its current.",
  parameters: { current: poleCurrent, drop: poleDrop },
  results: [
    { name: "resistance", unit: "Ω", meaning: "resistance of contacts, strip, coil and joints of the pole together" },
  ],
  answers: "row",
  sources: [{ document: "Ohm's law, R = ΔV ÷ I", standing: "handbook" }],
  cautions: [
    "A drop in phase with the current is meant: near a high a.c. current the loop of the meter's leads picks up a voltage that is not in the pole.",
    "Contacts are not ohmic: a reading at a few amperes may be several times that at the rating (common practice, no source). Compare readings at one current only.",
    hotLeadsCaution,
    dropCaution,
  ],
  examples: [
    { cells: [20, 0.16], gives: [0.008], worked: "hand-worked: 0.16 V ÷ 20 A = 8 mΩ" },
    { cells: [100, 0.075], gives: [0.00075], worked: "hand-worked: 0.075 V ÷ 100 A = 0.75 mΩ" },
  ],
  calculate: ({ current, drop }) => [poleOhms(current, drop)],
  explain: ({ current, drop }, [ohms]) => ({
    steps: [
      {
        sentence: "The drop is in phase with the current, so their quotient is the resistance",
        tex: String.raw`R = \frac{\Delta V}{I} = \frac{${tex(drop, "V")}}{${tex(current, "A")}} = ${tex(Number(ohms), "Ω")}`,
        plain: `R = ${say(drop, "V")} ÷ ${say(current, "A")} = ${say(Number(ohms), "Ω")}`,
      },
    ],
    answer: `The pole has ${say(Number(ohms), "Ω")} (${say(1000 * Number(ohms), "")} mΩ).`,
    cautions: millivoltsCaution(drop),
  }),
});
