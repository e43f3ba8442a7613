import { define } from "../definition/define";
import { type Given, quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { holdsUpTo, tripsFrom } from "../trip/current";
import { injectionCaution, magneticCaution, polesCaution } from "./accounts/cautions";
import { rangeCautions, rangeSources, rangeSteps } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { bandPlot } from "./pictures/trip-band";

const parameters = {
  time: quantity("s", "how long the current flows"),
  rating,
  characteristic,
  ...conditions,
} as const;

export default define({
  name: "TRIP.CURRENT",
  summary:
    "Up to which current a sound breaker surely holds for a time, and from which current it surely trips within it.",
  parameters,
  results: [
    { name: "holds up to", unit: "A", meaning: "the largest current whose shortest trip time is longer than that" },
    {
      name: "trips from",
      unit: "A",
      meaning: "the smallest current whose longest trip time is no longer; no limit: none is promised",
    },
  ],
  answers: "row",
  sources: documents,
  cautions: [magneticCaution, polesCaution, injectionCaution],
  examples: [
    {
      cells: [10, 20, "C"],
      gives: [23.98759, 119.4775],
      within: 1e-5,
      worked:
        "by hand: m² = p²·e^(t/τ) ÷ (e^(t/τ) − 1) with p = 1.13 and τ = 1 s ÷ 0.218618 = 4.57418 s for the quickest strip, 60 times that for the slowest",
    },
    {
      cells: [4000, 20, "C"],
      gives: [20, 29],
      worked:
        "beyond the hour of test a only the rating itself is promised; at 1.45 × from cold the slowest strip has tripped within 3744 s",
    },
    {
      cells: [0.05, 20, "C"],
      gives: [100, "no limit"],
      worked:
        "IEC 60898-1 Table 7, test d forbids a trip within 0.1 s up to 5 ×; no test asks for a trip sooner than 0.1 s",
    },
  ],
  calculate: (given) => {
    const { holds, trips } = answerOf(given);
    return [holds, trips ?? "no limit"];
  },
  explain: (given) => {
    const asked = askedOf(given);
    const { holds, trips } = answerOf(given);
    const at = say(given.time, "s");
    return {
      steps: [
        {
          sentence: `Where the shortest time falls to ${at}, searched along the band`,
          plain: `${say(holds, "A", 6)} = ${say(holds / given.rating, "×", 6)}`,
        },
        trips === undefined
          ? { sentence: `No current is promised to trip a sound breaker within ${at}` }
          : {
              sentence: `Where the longest time falls to ${at}`,
              plain: `${say(trips, "A", 6)} = ${say(trips / given.rating, "×", 6)}`,
            },
        { sentence: `The range at the first of them, ${say(holds, "A")}, as TRIP.RANGE tells it` },
        ...rangeSteps(asked, holds, asked.rangeAt(holds)),
      ],
      answer: `For ${at} a sound breaker holds up to ${say(holds, "A")}${trips === undefined ? ", and none is sure to have tripped" : ` and has tripped from ${say(trips, "A")}`}.`,
      sources: rangeSources(asked),
      cautions: rangeCautions(asked),
    };
  },
  plot: (given) => {
    const { holds, trips } = answerOf(given);
    const y = given.time;
    return bandPlot(askedOf(given), `The currents at ${say(given.time, "s")}`, {
      current: Math.max(holds, trips ?? 0),
      points: [
        { name: `holds up to ${say(holds, "A")}`, role: "asked", x: holds, y },
        ...(trips === undefined
          ? []
          : [{ name: `trips from ${say(trips, "A")}`, role: "asked" as const, x: trips, y }]),
      ],
    });
  },
});

type Inputs = Given<typeof parameters>;

const answerOf = (given: Inputs): { holds: number; trips: number | undefined } => {
  const asked = askedOf(given);
  return { holds: holdsUpTo(asked, given.time), trips: tripsFrom(asked, given.time) };
};
