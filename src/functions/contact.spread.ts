import { investigateAbove, investigateSource } from "../contact/neta";
import { lowestPole, poleSpread } from "../contact/spread";
import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { dropCaution, hotLeadsCaution } from "./accounts/cautions";
import { poles } from "./arguments/contact";

export default define({
  name: "CONTACT.SPREAD",
  summary: "The poles of one breaker compared with the lowest of them.",
  parameters: { ohms: poles },
  results: [
    { name: "ratio", unit: "", meaning: "resistance of the pole ÷ that of the lowest pole" },
    { name: "finding", unit: "", meaning: "lowest, alike (up to 1.5 ×), or investigate" },
  ],
  answers: "rows",
  sources: [
    investigateSource,
    { document: "NEMA AB 4", place: "5.4.5: not the sole criterion", standing: "corroborated" },
  ],
  cautions: [
    "Above 1.5 × the lowest pole means investigate (clean, exercise, tighten, measure again), not failed.",
    "A fault that all poles share does not show here; a breaker of one pole is compared with others like it.",
    "The answer is one row per pole, also where the poles lie across: TRANSPOSE turns it.",
    "Measure all poles at one current and equally warm: the ratio then does not depend on the current or the meter's gain.",
    hotLeadsCaution,
    dropCaution,
  ],
  examples: [
    {
      cells: [[[50e-6], [60e-6], [76e-6]]],
      gives: [
        [1, "lowest"],
        [1.2, "alike"],
        [1.52, "investigate"],
      ],
      worked: "hand-worked: 60 ÷ 50 = 1.2; 76 ÷ 50 = 1.52, above 1.5",
    },
    {
      cells: [[[50e-6, 75e-6, 75e-6]]],
      gives: [
        [1, "lowest"],
        [1.5, "alike"],
        [1.5, "alike"],
      ],
      worked: "hand-worked: 75 ÷ 50 = 1.5, exactly the line, which is not above it",
    },
    {
      cells: [[[130e-6], [180e-6], [150e-6]]],
      gives: [
        [1, "lowest"],
        [18 / 13, "alike"],
        [15 / 13, "alike"],
      ],
      worked: "hand-worked: 180 ÷ 130 = 1.385, 150 ÷ 130 = 1.154",
    },
  ],
  calculate: ({ ohms }) =>
    poleSpread(ohms).map((pole) => {
      if (pole === undefined) return ["", ""];
      return [pole.ratio, pole.ratio === 1 ? "lowest" : pole.investigate ? "investigate" : "alike"];
    }),
  explain: ({ ohms }, _, rows) => {
    const lowest = lowestPole(ohms);
    const flagged = rows.flatMap(([, finding], pole) => (finding === "investigate" ? [pole + 1] : []));
    return {
      steps: [
        {
          sentence: "The lowest pole",
          tex: String.raw`R_{\min} = ${tex(lowest, "Ω")}`,
          plain: `Rmin = ${say(lowest, "Ω")}`,
        },
        ...ohms.flatMap((pole, i) =>
          pole === undefined
            ? []
            : [
                {
                  sentence: `Pole ${i + 1}: ${rows[i]?.[1]}`,
                  tex: String.raw`\frac{${tex(pole, "Ω")}}{${tex(lowest, "Ω")}} = ${tex(Number(rows[i]?.[0]))}`,
                  plain: `${say(pole, "Ω")} ÷ ${say(lowest, "Ω")} = ${sayNumber(Number(rows[i]?.[0]))}`,
                },
              ],
        ),
      ],
      answer:
        flagged.length === 0
          ? `No pole is above ${investigateAbove} × the lowest.`
          : `Investigate pole ${flagged.join(", ")}: above ${investigateAbove} × the lowest.`,
    };
  },
  plot: ({ ohms }) => {
    const lowest = 1000 * lowestPole(ohms);
    const highest = 1000 * Math.max(...ohms.map((pole = 0) => pole));
    const line = (y: number) => [
      { x: 0.5, y },
      { x: ohms.length + 0.5, y },
    ];
    return {
      title: "Poles side by side",
      sentence: `The poles lie between ${say(lowest, "mΩ")} and ${say(highest, "mΩ")}; the line to investigate is at ${say(investigateAbove * lowest, "mΩ")}.`,
      x: { quantity: "pole", unit: "", scale: "linear", from: 0.5, to: ohms.length + 0.5 },
      y: {
        quantity: "resistance",
        unit: "mΩ",
        scale: "linear",
        from: 0,
        to: 1.1 * Math.max(highest, investigateAbove * lowest),
      },
      lines: [{ name: "investigate above", role: "limit", samples: line(investigateAbove * lowest) }],
      points: ohms.flatMap((pole, i) =>
        pole === undefined ? [] : [{ name: `pole ${i + 1}`, role: "asked" as const, x: i + 1, y: 1000 * pole }],
      ),
    };
  },
});
