import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { quotient } from "../metrology/propagate";
import { say } from "../metrology/say";
import {
  measuredPole,
  type PoleReadings,
  propagationAnswer,
  propagationCautions,
  propagationSources,
  propagationSteps,
} from "./accounts/propagation";
import { poleCurrent, poleDrop } from "./arguments/contact";
import { correlation, currentUncertainty, degrees, dropUncertainty } from "./arguments/meter";

const ohms = ({ correlation = 0, ...readings }: PoleReadings & { correlation: number | undefined }) => {
  const { current, drop } = measuredPole(readings);
  return quotient([drop, current], correlation);
};

export default define({
  name: "METER.OHMS",
  summary: "The resistance of a pole from its measured current and drop, with the uncertainty that the readings leave.",
  parameters: { current: poleCurrent, currentUncertainty, drop: poleDrop, dropUncertainty, correlation, degrees },
  results: [
    { name: "resistance", unit: "Ω", meaning: "drop divided by current" },
    { name: "u", unit: "Ω", meaning: "standard uncertainty" },
    { name: "U", unit: "Ω", meaning: "expanded uncertainty, for about 95 %" },
  ],
  answers: "row",
  sources: propagationSources,
  cautions: propagationCautions,
  examples: [
    {
      cells: [20, 0.13279056191361394, 0.0412, 0.00018509849630219403],
      gives: [0.00206, 1.6514407850924194e-5, 3.302881570184839e-5],
      worked:
        "another program: 41.2 mV ± (0.05 % + 3 × 0.1 mV), 20 A ± (1 % + 3 × 0.01 A); u by JCGM 100 eq. (10), k = 2",
    },
    {
      cells: [0.019661, 9.47100839404126e-6, 4.999, 0.0032093613071762423, -0.3553112198175105],
      gives: [254.25970194801891, 0.2363361300823795, 0.472672260164759],
      worked: "JCGM 100, H.2: Z = V ÷ I = 254.260 Ω, u = 0.236 Ω with r(V, I) = −0.36; more digits by another program",
    },
    {
      cells: [0.019661, 9.47100839404126e-6, 4.999, 0.0032093613071762423, -0.3553112198175105, 4],
      gives: [254.25970194801891, 0.2363361300823795, 0.2363361300823795 * 2.7764451051977943],
      worked:
        "the same with the degrees of freedom of five readings taken together, ν = 4: t = 2.776 (JCGM 100, table G.2)",
    },
  ],
  calculate: (readings) => {
    const { value, u, expanded } = ohms(readings);
    return [value, u, expanded];
  },
  explain: (readings) => {
    const result = ohms(readings);
    return {
      steps: [
        {
          sentence: "The resistance",
          tex: String.raw`R = \frac{\Delta V}{I} = \frac{${tex(readings.drop, "V")}}{${tex(readings.current, "A")}} = ${tex(result.value, "Ω")}`,
          plain: `R = ${say(readings.drop, "V")} ÷ ${say(readings.current, "A")} = ${say(result.value, "Ω")}`,
        },
        ...propagationSteps(result, {
          unit: "Ω",
          correlation: readings.correlation ?? 0,
          names: ["the drop", "the current"],
        }),
      ],
      answer: propagationAnswer("The pole has", result, "Ω"),
    };
  },
});
