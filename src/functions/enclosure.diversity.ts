import * as z from "zod/mini";
import { define } from "../definition/define";
import { optional, quantity, word } from "../definition/parameter";
import { tex } from "../definition/tex";
import { diversityFactor, diversityStandards, diversityTables } from "../enclosure/diversity";
import { say, sayNumber } from "../metrology/say";

export default define({
  name: "ENCLOSURE.DIVERSITY",
  summary:
    "The rated diversity factor of a group of circuits where nothing better is declared: a factor on the current of each.",
  parameters: {
    circuits: quantity(
      "",
      "number of outgoing circuits of the group",
      z.int("a whole number").check(z.minimum(1), z.maximum(10000)),
      {
        ifBlank: "the number of circuits is blank.",
      },
    ),
    standard: optional(word("the document whose table is read", diversityStandards), "IEC 61439-2"),
  },
  results: [{ name: "factor", unit: "", meaning: "rated diversity factor, at most 1" }],
  answers: "row",
  sources: Object.values(diversityTables).map(({ source }) => source),
  cautions: [
    "It is a factor on current; heat goes with its square when every circuit carries factor × its rating.",
    "Circuits that really run at full load together (electric heating, vehicle charging, lighting of a hall) have no diversity, whatever the table says.",
    "A factor that the assembly's maker declares goes before the table.",
  ],
  examples: [
    { cells: [9], gives: [0.7], worked: "published: IEC 61439-2 Table 101, 6 to 9 circuits" },
    { cells: [24], gives: [0.6], worked: "published: IEC 61439-2 Table 101, 10 and more circuits" },
    { cells: [5, "IEC 61439-3"], gives: [0.7], worked: "IEC 61439-3 Table 101 (from memory), 4 and 5 circuits" },
  ],
  calculate: ({ circuits, standard = "IEC 61439-2" }) => [diversityFactor(circuits, standard)],
  explain: ({ circuits, standard = "IEC 61439-2" }, [factor]) => {
    const { source, rows } = diversityTables[standard];
    const table = rows.map(({ to, factor }, i) => {
      const from = (rows[i - 1]?.to ?? 1) + 1;
      return Number.isFinite(to) ? `${from} to ${to}: ${factor}` : `${from} and more: ${factor}`;
    });
    const heat = Number(factor) ** 2;
    return {
      steps: [
        { sentence: `The table of ${standard} by number of circuits`, plain: table.join("; ") },
        {
          sentence: "With every circuit at this part of its current the heat is",
          tex: `f^2 = ${factor}^2 = ${tex(heat)}`,
          plain: `f² = ${factor}² = ${sayNumber(heat)} of the heat at full current`,
        },
      ],
      answer: `${circuits} circuits count at ${say(Number(factor), "")} of their current.`,
      sources: [source],
      cautions:
        source.standing === "from memory" ? [`The table of ${standard} is from memory: compare with the page.`] : [],
    };
  },
});
