import * as z from "zod/mini";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";

export default define({
  name: "METER.TURNS",
  summary: "The current in a conductor that passes several times through a clamp meter.",
  parameters: {
    reading: quantity("A", "what the clamp meter shows"),
    turns: quantity(
      "",
      "how many times the conductor passes through the jaws",
      z.int("a whole number").check(z.minimum(1)),
    ),
  },
  results: [{ name: "current", unit: "A", meaning: "current in the conductor" }],
  answers: "row",
  sources: [{ document: "Ampère's law: the clamp senses current times turns", standing: "handbook" }],
  cautions: [
    "Count the passes through the jaws, not the loops outside: a conductor that goes through once is one turn.",
    "All turns the same way round; a turn wound back takes one off.",
    "Wind and unwind the turns with the source off and the conductor dead. A current transformer whose secondary is open while current flows makes a voltage that kills: never take its meter off before the source.",
    "The limit of error of the reading is divided by the turns as well; the reading must stay inside the clamp's range.",
  ],
  examples: [
    { cells: [51, 10], gives: [5.1], worked: "hand-worked: 51 A ÷ 10 turns = 5.1 A" },
    { cells: [20, 1], gives: [20], worked: "one pass is the plain reading" },
  ],
  calculate: ({ reading, turns }) => [reading / turns],
  explain: ({ reading, turns }, [current]) => ({
    steps: [
      {
        sentence: "The clamp adds up every pass of the conductor",
        tex: String.raw`I = \frac{${tex(reading, "A")}}{${turns}} = ${tex(Number(current), "A")}`,
        plain: `I = ${say(reading, "A")} ÷ ${turns} = ${say(Number(current), "A")}`,
      },
    ],
    answer: `The conductor carries ${say(Number(current), "A")}.`,
  }),
});
