import { define } from "../definition/define";
import { optional } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { modelCautions, thermalEquation } from "../thermal/model";
import { heatInRamp, rampTrip } from "../thermal/ramp";
import { injectionCaution } from "./accounts/cautions";
import { currentOrOff, pickup, timeConstant } from "./arguments/body";
import { rampLaw, rampRate, rampStart } from "./arguments/ramp";
import { statePicture } from "./pictures/state";

export default define({
  name: "THERMAL.RAMP",
  summary:
    "When and at which current one breaker trips while the current is turned up evenly from cold, and why that lies above its pickup.",
  parameters: {
    rate: rampRate,
    pickup,
    timeConstant,
    from: optional(currentOrOff(rampStart), "0 A"),
  },
  results: [
    { name: "trip time", unit: "s", meaning: "from the start of the ramp" },
    { name: "trip current", unit: "A", meaning: "the current at that moment" },
  ],
  answers: "row",
  sources: [thermalEquation, rampLaw],
  cautions: [
    "A ramp does not measure the pickup: it shows where the lag of the strip meets the speed of the hand. For the pickup fit times at steady currents (THERMAL.FIT).",
    ...modelCautions,
    injectionCaution,
  ],
  examples: [
    {
      cells: [0.2, 22, 100],
      gives: [174.7316409381, 34.9463281876],
      worked: "scipy 1.10 solve_ivp (DOP853, rtol 1e-12)",
    },
    {
      cells: [0.5, 18, 80],
      gives: [72.72934719140811, 36.364673595704055],
      worked: "mpmath 1.2 (exact solution) and scipy 1.10",
    },
  ],
  calculate: ({ rate, pickup, timeConstant, from = 0 }) => {
    const { seconds, current } = rampTrip({ pickup, timeConstant }, { rate, from });
    return [seconds, current];
  },
  explain: ({ rate, pickup, timeConstant, from = 0 }, [time = 0, trip = 0]) => {
    const n = (value: number) => sayNumber(value, 5);
    const x = (value: number) => tex(value, "", 5);
    const [seconds, current] = [Number(time), Number(trip)];
    const passes = (pickup - from) / rate;
    const stateThen = passes > 0 ? heatInRamp(timeConstant, { rate, from }, passes) / pickup ** 2 : 0;
    const lag = rate * timeConstant;
    const above = current - pickup;
    const slow = (0.01 * pickup) / timeConstant;
    return {
      steps: [
        passes > 0
          ? {
              sentence: `When the current passes the pickup the strip is far from its trip: it follows the square of the current with a delay of its time constant, and has come to ${sayNumber(100 * stateThen, 3)} % of the trip's heat only`,
              tex: String.raw`t_p = \frac{I_p - I_0}{r} = \frac{${x(pickup)} - ${x(from)}}{${x(rate)}} = ${x(passes)}\ \mathrm{s},\qquad s(t_p) = ${x(stateThen)}`,
              plain: `passes the pickup at (${n(pickup)} − ${n(from)}) / ${n(rate)} = ${say(passes, "s")}; state there ${n(stateThen)}, 1 trips`,
            }
          : {
              sentence:
                "The ramp begins above the pickup already, so the strip heads for its trip from the first moment",
              plain: `${say(from, "A")} ≥ ${say(pickup, "A")}`,
            },
        {
          sentence:
            "While the rest of the heat comes in, the current goes on rising; in a ramp that lasts many time constants the delay alone is worth",
          tex: String.raw`r\,\tau = ${x(rate)} \cdot ${x(timeConstant)} = ${x(lag)}\ \mathrm{A}`,
          plain: `r·τ = ${n(rate)} × ${n(timeConstant)} = ${say(lag, "A")}`,
        },
        {
          sentence: "The trip is where the heat of the ramp meets the heat of the pickup",
          tex: String.raw`(i - r\tau)^2 + (r\tau)^2 + C\,e^{-t/\tau} = I_p^2,\quad i = ${x(from)} + ${x(rate)}\,t \;\Rightarrow\; t = ${x(seconds)}\ \mathrm{s},\ i = ${x(current)}\ \mathrm{A}`,
          plain: `(i − rτ)² + (rτ)² + C·e^(−t/τ) = Iₚ² with i = ${n(from)} + ${n(rate)}·t gives t = ${say(seconds, "s", 5)}, i = ${say(current, "A", 5)}`,
        },
        ...(passes > 0
          ? [
              {
                sentence: "To come within 1 % of the pickup the ramp would have to be slower than",
                tex: String.raw`r < 0.01\,\frac{I_p}{\tau} = ${x(slow)}\ \mathrm{A/s}`,
                plain: `r < 0.01 × ${n(pickup)} / ${n(timeConstant)} = ${say(slow, "A/s")}`,
              },
            ]
          : []),
      ],
      answer: `It trips at ${say(current, "A")} after ${say(seconds, "s")}: ${say(above, "A", 3)} (${sayNumber((100 * above) / pickup, 3)} %) above its pickup of ${say(pickup, "A")}.`,
    };
  },
  plot: ({ rate, pickup, timeConstant, from = 0 }, [time = 0, trip = 0]) => {
    const tripSeconds = Number(time);
    return statePicture({
      title: `The strip while the current rises by ${say(rate, "A/s")}`,
      sentence: `The state lags behind the square of the current and reaches the trip at ${say(Number(trip), "A")}, after ${say(tripSeconds, "s")}.`,
      seconds: 1.1 * tripSeconds,
      moments: pickup > from ? [(pickup - from) / rate] : [],
      tripSeconds,
      stateAt: (t) => heatInRamp(timeConstant, { rate, from }, t) / pickup ** 2,
      settlesAt: (t) => ((from + rate * t) / pickup) ** 2,
    });
  },
});
