import { z } from "zod";
import { poleWatts } from "../contact/watts";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { say } from "../metrology/say";

export default define({
  name: "CONTACT.WATTS",
  summary: "The heat a pole makes: its current times the voltage drop across it.",
  parameters: {
    current: quantity("A", "the current through the pole, r.m.s.", z.number().nonnegative()),
    drop: quantity(
      "V",
      "the voltage drop across the pole, line to load terminal, in volts (160 mV is 0.16)",
      z.number().nonnegative(),
    ),
  },
  results: [{ name: "heat", unit: "W", meaning: "power lost in the pole" }],
  answers: "row",
  sources: [{ document: "Joule's law, P = I·ΔV", standing: "handbook" }],
  cautions: [
    "Measure the drop warm and settled, at the terminals and inside the lead connections, or the joints of the leads are counted too.",
    "The source is a low-voltage one, but its current burns: bolt the leads, keep hands off while it runs, let it cool before touching.",
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
        tex: String.raw`P = I\,\Delta V = ${current} \cdot ${drop} = ${watts}\ \mathrm{W}`,
        plain: `P = ${say(current, "A")} × ${say(drop, "V")} = ${say(Number(watts), "W")}`,
      },
    ],
    answer: `The pole makes ${say(Number(watts), "W")} of heat at ${say(current, "A")}.`,
  }),
});
