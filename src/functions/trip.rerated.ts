import * as z from "zod/mini";
import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";
import { ambientLaw, rerated, usualTripRise } from "../trip/ambient";
import { referenceSource, document as usualDocument, calibration as usualReference } from "../trip/iec60898-tables";
import { airTemperature, holdSource } from "../trip/ul489-tables";
import { conditions, rating } from "./arguments/conditions";
import { zeroCaution } from "./arguments/zero-degrees";

export default define({
  name: "TRIP.RERATED",
  summary: "Where the bimetal's edge moves in warmer or cooler air, told as a current in place of the rating.",
  parameters: {
    rating,
    ambient: quantity("°C", "the air around the breaker", z.number().check(z.minimum(-40), z.maximum(60)), {
      hint: "in °C; was °F meant?",
    }),
    reference: optional(
      quantity("°C", "the temperature the breaker is calibrated at", z.number().check(z.minimum(-40), z.maximum(60)), {
        hint: "in °C; was °F meant?",
      }),
      `${usualReference} °C, the reference of ${usualDocument}`,
    ),
    tripRise: conditions.tripRise,
  },
  results: [
    {
      name: "re-rated",
      unit: "A",
      meaning: "the current that loads the strip in this air as the rating does at the reference",
    },
  ],
  answers: "row",
  sources: [
    ambientLaw,
    referenceSource,
    holdSource,
    { document: "ANSI/IEEE C37.20.1", place: "√((105 − T)/65), an instance for switchgear", standing: "corroborated" },
  ],
  cautions: [
    "It tells where the bimetal's edge moves, never a permitted load: above the rating that stays the rating, and the conductor's own limit.",
    `UL 489 gives no re-rating rule above ${airTemperature.hold} °C: ask for the maker's data.`,
    "The rise of the strip at its trip differs between breakers, commonly 55 to 100 K; the magnetic trip does not move.",
  ],
  examples: [
    {
      cells: [4000, 50, 40, 65],
      gives: [3679],
      within: 2e-4,
      worked: "ANSI/IEEE C37.20.1: √(55/65) = 0.920 at 50 °C; 4000 A × 0.91987 = 3679 A, rounded",
    },
    { cells: [20, 30], gives: [20], worked: "at the reference nothing moves" },
    { cells: [20, 50], gives: [17.32], within: 1e-4, worked: "by hand: √(60/80) = 0.8660; × 20 A = 17.32 A" },
  ],
  calculate: ({ rating, ambient, reference = usualReference, tripRise = usualTripRise }) => [
    rerated(rating, { ambient, reference, tripRise }),
  ],
  explain: ({ rating, ambient, reference = usualReference, tripRise = usualTripRise }, [edge]) => ({
    steps: [
      {
        sentence:
          "The strip trips at one temperature; what is left of its rise carries the current, and heat goes with the current's square",
        tex: String.raw`I = I_n\sqrt{(\theta_r - (T - T_0)) / \theta_r} = ${tex(rating, "A")} \cdot \sqrt{(${tex(tripRise)} - (${tex(ambient)} - ${tex(reference)})) / ${tex(tripRise)}} = ${tex(Number(edge), "A")}`,
        plain: `${say(rating, "A")} × √((${tripRise} − (${ambient} − ${reference})) ÷ ${tripRise}) = ${say(Number(edge), "A")}`,
      },
    ],
    answer: `In air at ${say(ambient, "°C")} the strip of a ${say(rating, "A")} breaker behaves as one of ${say(Number(edge), "A")} at ${say(reference, "°C")}.`,
    cautions: zeroCaution("air", ambient),
  }),
});
