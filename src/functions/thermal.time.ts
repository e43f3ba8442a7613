import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { secondsToTrip } from "../thermal/body";
import { modelCautions, thermalEquation } from "../thermal/model";
import { pickup, preload, preloadBelow, testCurrent, timeConstant } from "./arguments/body";
import { statePicture } from "./pictures/state";

export default define({
  name: "THERMAL.TIME",
  summary: "How long one breaker's bimetal takes to trip at a steady current, from cold or after a long preload.",
  parameters: { current: testCurrent("the steady test current, r.m.s."), pickup, timeConstant, preload },
  results: [{ name: "time", unit: "s", meaning: "time to the trip; “holds” at or below the pickup" }],
  answers: "row",
  sources: [thermalEquation],
  cautions: modelCautions,
  examples: [
    {
      cells: [20, 10, 100],
      gives: [28.768207245178093],
      worked: "hand-worked: 100 s × ln(400/(400 − 100)) = 100 s × ln(4/3)",
    },
    {
      cells: [40, 18, 80],
      gives: [18.101875545850994],
      worked: "mpmath 1.2 (exact solution) and scipy 1.10 solve_ivp",
    },
    { cells: [32, 18.4, 110, 16], gives: [12.510164186117713], worked: "mpmath 1.2 (exact solution), warm from 16 A" },
    { cells: [18, 18.4, 110], gives: ["holds"], worked: "by definition: below the pickup it never trips" },
  ],
  calculate: (given) => {
    preloadBelow(given.pickup, given.preload);
    // The row is the body and its start: a long column makes no other objects.
    const seconds = secondsToTrip(given, given.current, given);
    return [seconds === Infinity ? "holds" : seconds];
  },
  explain: ({ current, pickup, timeConstant, preload = 0 }, [time = ""]) => {
    const n = (value: number) => sayNumber(value, 6);
    const x = (value: number) => tex(value, "", 6);
    const start = {
      sentence:
        preload > 0
          ? "The strip starts warm: carried for long, the preload has brought it part of the way to the trip"
          : "The strip starts cold, with its whole way to the trip before it",
      tex: String.raw`\left(\frac{I_0}{I_p}\right)^2 = \left(\frac{${x(preload)}}{${x(pickup)}}\right)^2 = ${x((preload / pickup) ** 2)}`,
      plain: `start state = (${n(preload)} / ${n(pickup)})² = ${n((preload / pickup) ** 2)}, where 1 trips`,
    };
    if (typeof time !== "number")
      return {
        steps: [
          start,
          {
            sentence: "The current is not above the pickup, so the strip settles before its trip",
            tex: String.raw`\left(\frac{I}{I_p}\right)^2 = \left(\frac{${x(current)}}{${x(pickup)}}\right)^2 = ${x((current / pickup) ** 2)} \le 1`,
            plain: `settles at (${n(current)} / ${n(pickup)})² = ${n((current / pickup) ** 2)}, not above 1`,
          },
        ],
        answer: `At ${say(current, "A")} it holds: the pickup is ${say(pickup, "A")}.`,
      };
    const above = current ** 2 - preload ** 2;
    const below = (current - pickup) * (current + pickup);
    return {
      steps: [
        start,
        {
          sentence:
            "Heat grows with the square of the current and leaks away with the time constant; the strip trips at the heat of its pickup",
          tex: String.raw`t = \tau \ln\frac{I^2 - I_0^2}{I^2 - I_p^2} = ${x(timeConstant)} \cdot \ln\frac{${x(above)}}{${x(below)}} = ${x(time)}\ \mathrm{s}`,
          plain: `t = τ·ln((I² − I₀²)/(I² − Iₚ²)) = ${n(timeConstant)} s × ln(${n(above)} / ${n(below)}) = ${say(time, "s", 6)}`,
        },
      ],
      answer: `At ${say(current, "A")} the strip trips after ${say(time, "s")}${preload > 0 ? `, warm from ${say(preload, "A")}` : ", from cold"}.`,
    };
  },
  plot: ({ current, pickup, timeConstant, preload = 0 }, [time = ""]) => {
    const tripSeconds = typeof time === "number" ? time : Infinity;
    const settled = (current / pickup) ** 2;
    const start = (preload / pickup) ** 2;
    return statePicture({
      title: `The strip at ${say(current, "A")}`,
      sentence:
        tripSeconds < Infinity
          ? `The thermal state rises from ${sayNumber(start)} and reaches the trip, 1, after ${say(tripSeconds, "s")}.`
          : `The thermal state settles at ${sayNumber(settled)}, below the trip at 1.`,
      seconds: tripSeconds < Infinity ? Math.max(1.2 * tripSeconds, 1e-9) : 5 * timeConstant,
      stateAt: (t) => start - (settled - start) * Math.expm1(-t / timeConstant),
      settlesAt: () => settled,
      tripSeconds,
    });
  },
});
