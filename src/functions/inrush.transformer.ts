import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { hundredthSecond, type InrushPoint, tenthSecond } from "../inrush/ieee242";
import { transformerInrush } from "../inrush/transformer";
import { say } from "../metrology/say";
import { phases, volts } from "./arguments/inrush";

export default define({
  name: "INRUSH.TRANSFORMER",
  summary: "What a transformer draws at full load and when it is switched on, at the two usual points of its inrush.",
  parameters: { power: quantity("kVA", "rated power of the transformer"), volts, phases },
  results: [
    { name: "full load", unit: "A", meaning: "rated current on this side, r.m.s." },
    { name: "at 0.1 s", unit: "A", meaning: `${tenthSecond.multiple} × full load, r.m.s. equivalent` },
    { name: "at 0.01 s", unit: "A", meaning: `${hundredthSecond.multiple} × full load, r.m.s. equivalent` },
  ],
  answers: "row",
  sources: [
    { document: "Apparent power, S = V·I or √3·V·I", standing: "handbook" },
    tenthSecond.source,
    hundredthSecond.source,
  ],
  cautions: [
    "Points to plan with, not limits: closing near voltage zero on a core left magnetised the same way is the worst case, and most closings are milder.",
    "Toroids and other low-loss cores may peak at 30 to 60 times in the first cycle (from memory); a stiff supply makes it worse.",
    "A breaker that rides through is not thereby permitted: the code limits what may protect a transformer and its conductors (NFPA 70, 450.3, from memory), and the local code decides.",
    "The inrush is one-sided pulses: peak-sensing magnetic releases feel more of it than an r.m.s. meter shows.",
  ],
  examples: [
    {
      cells: [75, 480, 3],
      gives: [90.211, 1082.532, 2255.274],
      within: 1e-5,
      worked: "hand-worked: 75,000 VA ÷ (1.7320508 × 480 V) = 90.211 A; × 12 and × 25",
    },
    {
      cells: [1, 240, 1],
      gives: [1000 / 240, 50, 2500 / 24],
      worked: "hand-worked: 1000 VA ÷ 240 V = 4.167 A; × 12 and × 25",
    },
  ],
  calculate: ({ power, ...supply }) => {
    const inrush = transformerInrush({ kilovoltAmperes: power, ...supply });
    return [inrush.fullLoad, inrush.tenthSecond, inrush.hundredthSecond];
  },
  explain: ({ power, volts, phases }, [fullLoad, tenth, hundredth]) => {
    const root = phases === 3 ? { tex: String.raw`\sqrt3 \cdot `, plain: "√3 × " } : { tex: "", plain: "" };
    const point = ({ multiple, seconds }: InrushPoint, amperes: number) => ({
      sentence: `The point at ${seconds} s`,
      tex: String.raw`${multiple} \cdot ${tex(Number(fullLoad), "A")} = ${tex(amperes, "A")}`,
      plain: `${multiple} × ${say(Number(fullLoad), "A")} = ${say(amperes, "A")}`,
    });
    return {
      steps: [
        {
          sentence: "The full-load current",
          tex: String.raw`I = \frac{${tex(1000 * power, "VA")}}{${root.tex}${tex(volts, "V")}} = ${tex(Number(fullLoad), "A")}`,
          plain: `I = ${say(1000 * power, "VA")} ÷ (${root.plain}${say(volts, "V")}) = ${say(Number(fullLoad), "A")}`,
        },
        point(tenthSecond, Number(tenth)),
        point(hundredthSecond, Number(hundredth)),
      ],
      answer: `Full load ${say(Number(fullLoad), "A")}; when switched on as much as ${say(Number(tenth), "A")} for 0.1 s and ${say(Number(hundredth), "A")} for 0.01 s.`,
    };
  },
  plot: (_, [fullLoad, tenth, hundredth]) => ({
    title: "Inrush points",
    sentence: `The inrush falls from ${say(Number(hundredth), "A")} at 0.01 s over ${say(Number(tenth), "A")} at 0.1 s towards ${say(Number(fullLoad), "A")}.`,
    x: { quantity: "current", unit: "A", scale: "log", from: 0.5 * Number(fullLoad), to: 50 * Number(fullLoad) },
    y: { quantity: "time", unit: "s", scale: "log", from: 0.001, to: 1 },
    points: [inrushPoint(tenthSecond, Number(tenth)), inrushPoint(hundredthSecond, Number(hundredth))],
    lines: [
      {
        name: "full load",
        role: "course",
        samples: [
          { x: Number(fullLoad), y: 0.001 },
          { x: Number(fullLoad), y: 1 },
        ],
      },
    ],
  }),
});

const inrushPoint = ({ multiple, seconds }: InrushPoint, amperes: number) =>
  ({ name: `${multiple} × at ${seconds} s`, role: "asked", x: amperes, y: seconds }) as const;
