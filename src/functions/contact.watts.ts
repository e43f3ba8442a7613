import { poleWatts } from "../contact/watts";
import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";
import { dropCaution, hotLeadsCaution } from "./accounts/cautions";
import { poleCurrent, poleDrop } from "./arguments/contact";
import { millivoltsCaution } from "./arguments/millivolts";

export default define({
  name: "CONTACT.WATTS",
  summary: "The heat a pole makes: its current times the voltage drop across it.",
  parameters: { current: poleCurrent, drop: poleDrop },
  results: [{ name: "heat", unit: "W", meaning: "power lost in the pole" }],
  answers: "row",
  sources: [{ document: "Joule's law, P = I·ΔV", standing: "handbook" }],
  cautions: [
    "Measure the drop warm and settled, at the terminals and inside the lead connections, or the joints of the leads are counted too.",
    "On a.c. the drop is taken to be in phase with the current; a voltage picked up by the loop of the meter's leads is not heat.",
    hotLeadsCaution,
    dropCaution,
  ],
  examples: [
    { cells: [20, 0.16], gives: [3.2], worked: "hand-worked: 20 A × 0.16 V = 3.2 W" },
    { cells: [100, 0.075], gives: [7.5], worked: "hand-worked: 100 A × 0.075 V = 7.5 W" },
  ],
  calculate: ({ current, drop }) => [poleWatts(current, drop)],
  explain: ({ current, drop }, [watts]) => ({
    steps: [
      {
        sentence: "The drop is in phase with the current, so their product is the heat",
        tex: String.raw`P = I\,\Delta V = ${tex(current, "A")} \cdot ${tex(drop, "V")} = ${tex(Number(watts), "W")}`,
        plain: `P = ${say(current, "A")} × ${say(drop, "V")} = ${say(Number(watts), "W")}`,
      },
    ],
    answer: `The pole makes ${say(Number(watts), "W")} of heat at ${say(current, "A")}.`,
    cautions: millivoltsCaution(drop),
  }),
});
