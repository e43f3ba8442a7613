import * as z from "zod/mini";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { heatAfter } from "../thermal/body";
import { modelCautions, thermalEquation } from "../thermal/model";
import { currentOrOff, pickup, startState, timeConstant } from "./arguments/body";
import { statePicture } from "./pictures/state";

/** Thermal state after a steady current: multiples of the pickup stand for amperes. */
const stateAfter = (
  given: { current: number; pickup: number; timeConstant: number; start?: number },
  seconds: number,
) => heatAfter(given.timeConstant, { heat: given.start ?? 0, current: given.current / given.pickup, seconds });

export default define({
  name: "THERMAL.STATE",
  summary: "How warm one breaker's bimetal is after a steady current has flowed for a while: 0 is cold, 1 is the trip.",
  parameters: {
    current: currentOrOff("the steady current; 0 is off"),
    time: quantity("s", "how long it flows", z.number().check(z.nonnegative())),
    pickup,
    timeConstant,
    start: startState,
  },
  results: [{ name: "state", unit: "", meaning: "thermal state, 1 = trips; “tripped” past it" }],
  answers: "row",
  sources: [thermalEquation],
  cautions: modelCautions,
  examples: [
    {
      cells: [10, 69.31471805599453, 10, 100],
      gives: [0.5],
      worked: "hand-worked: after τ·ln 2 at the pickup half the way is done",
    },
    {
      cells: [0, 100, 18, 100, 0.8],
      gives: [0.294303552937154],
      worked: "hand-worked: cooling for one time constant leaves 0.8/e",
    },
    {
      cells: [40, 20, 19, 90],
      gives: [0.883158325022458],
      within: 1e-9,
      worked: "mpmath 1.2: heat 318.82015533310715 A² of 361 A²",
    },
    { cells: [40, 30, 18, 80], gives: ["tripped"], worked: "mpmath 1.2: the trip comes at 18.10 s" },
  ],
  calculate: (given) => {
    const state = stateAfter(given, given.time);
    return [state > 1 || given.start === 1 ? "tripped" : state];
  },
  explain: (given, [state = ""]) => {
    const { current, time, pickup, timeConstant, start = 0 } = given;
    const n = (value: number) => sayNumber(value, 6);
    const x = (value: number) => tex(value, "", 6);
    const settled = (current / pickup) ** 2;
    const left = Math.exp(-time / timeConstant);
    return {
      steps: [
        {
          sentence: "For ever, this current would take the strip to",
          tex: String.raw`s_\infty = \left(\frac{I}{I_p}\right)^2 = \left(\frac{${x(current)}}{${x(pickup)}}\right)^2 = ${x(settled)}`,
          plain: `s∞ = (${n(current)} / ${n(pickup)})² = ${n(settled)}`,
        },
        {
          sentence: "Of the distance from its start a share is left after this time",
          tex: String.raw`e^{-t/\tau} = e^{-${x(time)}/${x(timeConstant)}} = ${x(left)}`,
          plain: `e^(−t/τ) = e^(−${n(time)} / ${n(timeConstant)}) = ${n(left)}`,
        },
        {
          sentence:
            typeof state === "number" ? "So the strip stands at" : "So the strip would stand beyond its trip, at",
          tex: String.raw`s = s_\infty + (s_0 - s_\infty)\,e^{-t/\tau} = ${x(settled)} + (${x(start)} - ${x(settled)}) \cdot ${x(left)} = ${x(stateAfter(given, time))}`,
          plain: `s = s∞ + (s₀ − s∞)·e^(−t/τ) = ${n(settled)} + (${n(start)} − ${n(settled)}) × ${n(left)} = ${n(stateAfter(given, time))}`,
        },
      ],
      answer:
        typeof state === "number"
          ? `After ${say(time, "s")} at ${say(current, "A")} the strip has ${sayNumber(100 * state, 3)} % of the heat that trips it.`
          : `Within ${say(time, "s")} at ${say(current, "A")} it has tripped.`,
    };
  },
  plot: (given, [state = ""]) => {
    const { current, time, pickup, timeConstant, start = 0 } = given;
    if (time === 0) return undefined;
    const settled = (current / pickup) ** 2;
    const tripSeconds =
      typeof state === "number" ? Infinity : timeConstant * Math.log((settled - start) / (settled - 1));
    return statePicture({
      title: `The strip at ${say(current, "A")}`,
      sentence: `From a thermal state of ${sayNumber(start)} the strip heads for ${sayNumber(settled)}; 1 is the trip.`,
      seconds: time,
      stateAt: (t) => stateAfter(given, t),
      settlesAt: () => settled,
      tripSeconds: Number.isNaN(tripSeconds) ? 0 : tripSeconds,
    });
  },
});
