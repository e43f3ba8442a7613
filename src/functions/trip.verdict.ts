import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import type { Given } from "../definition/parameter";
import { optional, quantity, word } from "../definition/parameter";
import { say } from "../metrology/say";
import { type Trial, verdict } from "../trip/verdict";
import { injectionCaution, magneticCaution, polesCaution, verdictCaution, wearCaution } from "./accounts/cautions";
import { rangeCautions, rangeSources, rangeSteps } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { verdictAdvice } from "./accounts/verdict-advice";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { bandPlot } from "./pictures/trip-band";

const parameters = {
  current: quantity("A", "the test current, r.m.s."),
  time: quantity("s", "the time to trip, or for which it held", z.number().check(z.positive()), {
    ifBlank: "no time: a current without its time is no trial.",
  }),
  rating,
  characteristic,
  outcome: optional(
    word("tripped or held; for a current turned up until the trip see TRIP.RAMP", ["tripped", "held", "ramped"], {
      ifBlank: "no outcome: say tripped or held.",
    }),
    "tripped",
  ),
  ...conditions,
  currentError: optional(
    quantity("A", "limit of error of the current, as METER.ERROR gives it", z.number().check(z.nonnegative())),
    "taken as exact",
  ),
  timeError: optional(quantity("s", "limit of error of the time", z.number().check(z.nonnegative())), "taken as exact"),
} as const;

export default define({
  name: "TRIP.VERDICT",
  summary: "Whether one measured trial lies in the range of a sound breaker, and which line it crossed if not.",
  parameters,
  results: [
    {
      name: "verdict",
      unit: "",
      meaning:
        "in range; early; late; outside the computed band; did not trip in time; undecided until a time; too close to call",
    },
    { name: "why", unit: "", meaning: "the line that was crossed, or not, and whose line it is" },
  ],
  answers: "row",
  sources: [...documents, { document: "JCGM 106", edition: "2012", place: "guarded acceptance", standing: "handbook" }],
  cautions: [verdictCaution, magneticCaution, polesCaution, injectionCaution],
  examples: [
    {
      cells: [51, 30, 20, "C"],
      gives: ["in range", "tripped after 30 s; a sound breaker may take 1 s to 60 s"],
      worked: "IEC 60898-1 Table 7, test c: between 1 s and 60 s",
    },
    {
      cells: [51, 75, 20, "C"],
      gives: [
        "late",
        "beyond a printed limit: tripped after 75 s; test c: 2.55 × from cold, within 60 s (IEC 60898-1 (2015 + A1:2019), Table 7, test c: corroborated)",
      ],
      worked: "IEC 60898-1 Table 7, test c: within 60 s up to 32 A",
    },
    {
      cells: [22.6, 1800, 20, "C", "held"],
      gives: ["undecided until 3600 s", "held for 1800 s; the hold test lasts 3600 s"],
      worked: "IEC 60898-1 Table 7, test a: 1 h up to 63 A",
    },
  ],
  calculate: (given) => {
    const { verdict, why } = judged(given);
    return [verdict, why];
  },
  explain: (given, [answer, why]) => {
    const asked = askedOf(given);
    const { current, time, outcome = "tripped" } = given;
    return {
      steps: [
        ...rangeSteps(asked, current, asked.rangeAt(current)),
        ...guardSteps(given),
        {
          sentence: `The trial: ${outcome} ${outcome === "held" ? "for" : "after"} ${say(time, "s")} at ${say(current, "A")}`,
          plain: String(why),
        },
      ],
      answer: asSentence(String(why).startsWith(String(answer)) ? String(why) : `${String(answer)}: ${String(why)}`),
      sources: rangeSources(asked),
      cautions: [
        ...verdictAdvice(asked, String(answer), String(why)),
        ...(asked.bench?.magnetic && current > asked.bench.magnetic.lower ? [wearCaution] : []),
        ...rangeCautions(asked),
      ],
    };
  },
  plot: (given) => {
    const { current, time, outcome } = given;
    const held = outcome === "held";
    const name = `${held ? "held" : "tripped"}: ${say(current, "A")}, ${say(time, "s")}`;
    return bandPlot(askedOf(given), "The trial against the band", {
      current,
      points: [{ name, role: held ? "held" : "tripped", x: current, y: time }],
    });
  },
});

type Inputs = Given<typeof parameters>;

const judged = (given: Inputs) => {
  const { current, time, outcome = "tripped", currentError = 0, timeError = 0 } = given;
  if (outcome === "ramped")
    throw new BadInput(
      "outcome: a current turned up until the trip is judged by TRIP.RAMP, not by a time at one current.",
    );
  if (currentError >= current)
    throw new BadInput(
      `current error: ${say(currentError, "A")} leaves nothing of the current of ${say(current, "A")}.`,
    );
  const trial: Trial = { current, time, outcome, currentError, timeError };
  return verdict(askedOf(given), trial);
};

const guardSteps = ({ currentError = 0, timeError = 0, current, time }: Inputs) =>
  currentError > 0 || timeError > 0
    ? [
        {
          sentence:
            "A verdict stands only if every current and time that the meters allow would give it (guarded decision)",
          plain: `${say(current - currentError, "A")} to ${say(current + currentError, "A")}, ${say(time - timeError, "s")} to ${say(time + timeError, "s")}`,
        },
      ]
    : [];

const asSentence = (words: string): string => `${words.replace(/^./, (first) => first.toUpperCase())}.`;
