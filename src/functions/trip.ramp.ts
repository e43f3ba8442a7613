import * as z from "zod/mini";
import { define } from "../definition/define";
import { type Given, optional, quantity } from "../definition/parameter";
import type { Step } from "../definition/step";
import { tex } from "../definition/tex";
import { NoAnswer } from "../metrology/no-answer";
import { say } from "../metrology/say";
import type { Bench } from "../trip/conditions";
import { rampRange } from "../trip/ramp";
import { injectionCaution, magneticCaution, polesCaution } from "./accounts/cautions";
import { rangeCautions, rangeSources } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { rampLaw, rampRate, rampStart } from "./arguments/ramp";

const parameters = {
  rate: rampRate,
  rating,
  characteristic,
  from: optional(quantity("A", rampStart, z.number().check(z.nonnegative())), "0 A"),
  ...conditions,
} as const;

export default define({
  name: "TRIP.RAMP",
  summary:
    "Between which currents a sound breaker lets go when the current is turned up by hand, and why that lies above its pickup.",
  parameters,
  results: [
    { name: "lowest", unit: "A", meaning: "a sound breaker never trips at less on this ramp" },
    { name: "highest", unit: "A", meaning: "a sound breaker has tripped by here on this ramp" },
  ],
  answers: "row",
  sources: [...documents, rampLaw],
  cautions: [
    "A current turned up by hand is no test of any standard: the faster the hand, the higher the trip. Judge a breaker by times at steady currents.",
    magneticCaution,
    polesCaution,
    injectionCaution,
  ],
  examples: [
    {
      cells: [0.2, 20, "C"],
      gives: [23.4963176886, 47.8811917263],
      within: 1e-9,
      worked:
        "another program steps τ·dθ/dt = i² − θ (Runge–Kutta) until θ = p², for the quickest sound strip, p = 1.13 and τ = 4.574 s, and the slowest, p = 1.45 and τ = 153.6 s",
    },
    {
      cells: [1e-5, 20, "UL 489"],
      gives: [20, 27],
      within: 1e-3,
      worked:
        "turned up endlessly slowly every strip trips at its pickup, so the band is the hold edge and the trip edge: 1.00 × and 1.35 ×",
    },
  ],
  calculate: (given) => {
    const { lowest, highest } = rampRange(benchOf(given), turned(given));
    return [lowest, highest];
  },
  explain: (given, [lowest, highest]) => {
    const asked = askedOf(given);
    const bench = benchOf(given);
    return {
      steps: rampSteps(bench, given, Number(lowest), Number(highest)),
      answer: `Turned up at ${say(given.rate, "A/s")} a sound breaker trips between ${say(Number(lowest), "A")} and ${say(Number(highest), "A")}.`,
      sources: rangeSources(asked),
      cautions: rangeCautions(asked),
    };
  },
  plot: (given, [lowest, highest]) => {
    const { from, rate } = turned(given);
    const top = Number(highest) * 1.15;
    const end = (top - from) / rate;
    return {
      title: "The current turned up by hand",
      sentence: `The current rises at ${say(rate, "A/s")}; a sound breaker trips between ${say(Number(lowest), "A")} and ${say(Number(highest), "A")}.`,
      x: { quantity: "time", unit: "s", scale: "linear", from: 0, to: end },
      y: { quantity: "current", unit: "A", scale: "linear", from: 0, to: top },
      bands: [
        {
          name: "a sound breaker trips",
          samples: [0, end].map((x) => ({ x, low: Number(lowest), high: Number(highest) })),
        },
      ],
      lines: [
        {
          name: "current",
          role: "course",
          samples: [
            { x: 0, y: from },
            { x: end, y: top },
          ],
        },
      ],
      points: [lowest, highest].map((current, i) => ({
        name: i === 0 ? "lowest" : "highest",
        role: "asked",
        x: (Number(current) - from) / rate,
        y: Number(current),
      })),
    };
  },
});

type Inputs = Given<typeof parameters>;

const turned = ({ rate, from = 0 }: Inputs) => ({ rate, from });

const benchOf = (given: Inputs): Bench => {
  const { bench } = askedOf(given);
  if (!bench)
    throw new NoAnswer(
      "characteristic: an own band says nothing of a current that changes; ask by a characteristic, or THERMAL.RAMP for one breaker's own strip.",
    );
  return bench;
};

const rampSteps = (
  { holdEdge, tripEdge, magnetic }: Bench,
  { rate, from = 0, rating }: Inputs,
  lowest: number,
  highest: number,
): Step[] => [
  {
    sentence:
      "Turned up endlessly slowly a sound breaker would trip at its pickup, which lies between its hold edge and its trip edge",
    plain: `${say(holdEdge, "A")} to ${say(tripEdge, "A")}`,
  },
  {
    sentence: `At ${say(rate, "A/s")} the strip lags behind the current by about its time constant, so it trips later and higher: τ·dθ/dt = i² − θ, solved for every sound strip`,
    tex: String.raw`\tau\,\frac{d\theta}{dt} = i^2 - \theta, \qquad i = \frac{${tex(from)} + ${tex(rate)}\,t}{${tex(rating)}}`,
    plain: `${say(lowest, "A")} to ${say(highest, "A")}, that is ${say(lowest - holdEdge, "A")} above the hold edge to ${say(highest - tripEdge, "A")} above the trip edge`,
  },
  ...(magnetic
    ? [
        {
          sentence: "The magnetic release caps the band",
          plain: `it may trip above ${say(magnetic.lower, "A")} and must from ${say(magnetic.upper, "A")}`,
        },
      ]
    : []),
];
