import * as z from "zod/mini";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { secondsToCool } from "../thermal/body";
import { modelCautions, thermalEquation } from "../thermal/model";
import { timeConstant } from "./arguments/body";
import { statePicture } from "./pictures/state";

export default define({
  name: "THERMAL.REST",
  summary: "How long one breaker's bimetal must rest without current to cool from one thermal state to another.",
  parameters: {
    state: quantity("", "thermal state now: 1 just after a thermal trip", z.number().check(z.positive(), z.maximum(1))),
    target: quantity(
      "",
      "thermal state to wait for: 0.01 is nearly cold",
      z.number().check(z.positive(), z.maximum(1)),
    ),
    timeConstant,
  },
  results: [{ name: "rest", unit: "s", meaning: "time without current; 0 if it is cool enough already" }],
  answers: "row",
  sources: [thermalEquation],
  cautions: [
    "Wait too until the terminals are back at room temperature: the housing cools more slowly than the strip.",
    "Cooling with the contacts open may take longer than warming did: the time constant was found with current flowing.",
  ],
  examples: [
    { cells: [1, 0.01, 300], gives: [1381.5510557964274], worked: "hand-worked: 300 s × ln 100" },
    { cells: [0.5, 0.25, 100], gives: [69.31471805599453], worked: "hand-worked: 100 s × ln 2" },
    { cells: [0.2, 0.5, 100], gives: [0], worked: "by definition: it is cooler than asked for" },
  ],
  calculate: ({ state, target, timeConstant }) => [secondsToCool(timeConstant, { from: state, to: target })],
  explain: ({ state, target, timeConstant }, [rest = 0]) => ({
    steps: [
      {
        sentence:
          state > target
            ? "Without current the state falls by the same share in equal times"
            : "Without current the state falls by the same share in equal times; here the target lies behind",
        tex: String.raw`t = \tau \ln\frac{s_0}{s} = ${tex(timeConstant)} \cdot \ln\frac{${tex(state)}}{${tex(target)}} = ${tex(timeConstant * Math.log(state / target))}\ \mathrm{s}`,
        plain: `t = τ·ln(s₀/s) = ${say(timeConstant, "s")} × ln(${sayNumber(state)} / ${sayNumber(target)}) = ${say(timeConstant * Math.log(state / target), "s")}`,
      },
    ],
    answer: rest === 0 ? "It is cool enough already." : `Rest it for ${say(Number(rest), "s")}.`,
    cautions: modelCautions.slice(1, 2),
  }),
  plot: ({ state, target, timeConstant }, [rest = 0]) =>
    rest === 0
      ? undefined
      : statePicture({
          title: "The strip at rest",
          sentence: `The thermal state falls from ${sayNumber(state)} to ${sayNumber(target)} in ${say(Number(rest), "s")}.`,
          seconds: 1.2 * Number(rest),
          moments: [Number(rest)],
          tripSeconds: Infinity,
          stateAt: (t) => state * Math.exp(-t / timeConstant),
          settlesAt: () => 0,
        }),
});
