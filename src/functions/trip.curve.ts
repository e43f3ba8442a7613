import * as z from "zod/mini";
import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { curve } from "../trip/curve";
import { injectionCaution, magneticCaution, polesCaution } from "./accounts/cautions";
import { longestAnswer, rangeCautions, rangeSources, shortestAnswer } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { bandPlot } from "./pictures/trip-band";

const usualPoints = 60;

export default define({
  name: "TRIP.CURVE",
  summary: "The whole band of a sound breaker in rows, for a scatter chart with logarithmic axes.",
  parameters: {
    rating,
    characteristic,
    points: optional(
      quantity(
        "",
        "how many currents, evenly spaced on a log axis, beside the edges",
        z.int("a whole number").check(z.minimum(2), z.maximum(2000)),
      ),
      String(usualPoints),
    ),
    ...conditions,
  },
  results: [
    { name: "current", unit: "A", meaning: "rising from the rating" },
    { name: "multiple", unit: "×", meaning: "current ÷ rating" },
    { name: "shortest", unit: "s", meaning: "as TRIP.RANGE gives it" },
    { name: "longest", unit: "s", meaning: "as TRIP.RANGE gives it" },
  ],
  answers: "rows",
  sources: documents,
  cautions: [
    "A computed band of all strips that meet the printed points, not a maker's curve.",
    "Texts (holds, no limit) and a shortest time of 0 have no place on a logarithmic axis; a chart leaves them out.",
    magneticCaution,
    polesCaution,
    injectionCaution,
  ],
  examples: [
    {
      cells: [20, "C", 2],
      gives: [
        [20, 1, "holds", "no limit"],
        [22.6, 1.13, 3600, "no limit"],
      ],
      within: 1e-9,
      worked: "the rating and the hold edge, test a of IEC 60898-1 Table 7",
    },
  ],
  calculate: (given) => {
    const asked = askedOf(given);
    return curve(asked, given.points ?? usualPoints).map(({ current, range }) => [
      current,
      current / given.rating,
      shortestAnswer(range),
      longestAnswer(range),
    ]);
  },
  explain: (given, __, rows) => {
    const asked = askedOf(given);
    return {
      steps: [
        { sentence: "Each row is TRIP.RANGE at its current; both sides of each step of the band stand among them" },
      ],
      answer: `${rows.length} rows from ${say(Number(rows[0]?.[0]), "A")} to ${say(Number(rows.at(-1)?.[0]), "A")}.`,
      sources: rangeSources(asked),
      cautions: rangeCautions(asked),
    };
  },
  plot: (given) => bandPlot(askedOf(given), "The band of a sound breaker", { current: given.rating, points: [] }),
});
