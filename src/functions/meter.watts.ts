import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { product } from "../metrology/propagate";
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

const watts = ({ correlation = 0, ...readings }: PoleReadings & { correlation: number | undefined }) => {
  const { current, drop } = measuredPole(readings);
  return product([current, drop], correlation);
};

export default define({
  name: "METER.WATTS",
  summary: "The heat of a pole from its measured current and drop, with the uncertainty that the readings leave.",
  parameters: { current: poleCurrent, currentUncertainty, drop: poleDrop, dropUncertainty, correlation, degrees },
  results: [
    { name: "heat", unit: "W", meaning: "current times drop" },
    { name: "u", unit: "W", meaning: "standard uncertainty" },
    { name: "U", unit: "W", meaning: "expanded uncertainty, for about 95 %" },
  ],
  answers: "row",
  sources: propagationSources,
  cautions: propagationCautions,
  examples: [
    {
      cells: [20, 0.13279056191361394, 0.0412, 0.00018509849630219403, 0.9],
      gives: [0.824, 0.00894942310245005, 0.0178988462049001],
      worked: "another program: 41.2 mV and 20 A read on one meter, correlation 0.9; u by JCGM 100 eq. (16), k = 2",
    },
    {
      cells: [16.02, 0.15605777776195584, 230.4, 1.237377096927206],
      gives: [3691.008, 41.0579575163796, 82.1159150327592],
      worked:
        "another program: 230.4 V ± (0.8 % + 3 × 0.1 V), 16.02 A ± (1.5 % + 3 × 0.01 A); u by JCGM 100 eq. (10), k = 2",
    },
  ],
  calculate: (readings) => {
    const { value, u, expanded } = watts(readings);
    return [value, u, expanded];
  },
  explain: (readings) => {
    const result = watts(readings);
    return {
      steps: [
        {
          sentence: "The heat",
          tex: String.raw`P = I\,\Delta V = ${tex(readings.current, "A")} \cdot ${tex(readings.drop, "V")} = ${tex(result.value, "W")}`,
          plain: `P = ${say(readings.current, "A")} × ${say(readings.drop, "V")} = ${say(result.value, "W")}`,
        },
        ...propagationSteps(result, {
          unit: "W",
          correlation: readings.correlation ?? 0,
          names: ["the current", "the drop"],
        }),
      ],
      answer: propagationAnswer("The pole makes", result, "W"),
    };
  },
});
