import { yours } from "../looks";
import { characteristics } from "../test-log";
import { lessonSheet, table } from "./lesson";

type Input = "rating" | "characteristic" | "pickup" | "timeConstant";

export const slowRamp = lessonSheet<Input>({
  name: "3 The slow ramp",
  title: "3   The slow ramp",
  question:
    "Turn the current up until the breaker trips, and read the ammeter at that moment. Is that the breaker's trip current?",
  inputs: {
    rating: { label: "Rating, A", value: 20 },
    characteristic: { label: "Characteristic", value: "C", words: characteristics },
    pickup: { label: "One breaker's pickup, A", value: 25, remark: "what this one can just carry for ever" },
    timeConstant: { label: "Its time constant, s", value: 60, remark: "how slowly its strip follows" },
  },
  tables: [
    table<Input, number>([0.01, 0.1, 0.5, 2], (down, { cell }) => [
      { heading: "Turned up by, A/s", width: 24, format: "0.00", typed: (rate) => rate, look: yours },
      {
        heading: "Any sound one: from, A",
        width: 26,
        format: "0.0",
        formula: `=BIMETAL.TRIP.RAMP(${down("A")},${cell.rating},${cell.characteristic})`,
      },
      { heading: "to, A", width: 10, format: "0.0", answers: true },
      {
        heading: "This one: after, s",
        width: 18,
        format: "0.0",
        formula: `=BIMETAL.THERMAL.RAMP(${down("A")},${cell.pickup},${cell.timeConstant})`,
      },
      { heading: "at, A", width: 10, format: "0.0", answers: true },
      { heading: "Above its pickup", width: 17, format: "0%", formula: `=${down("E")}/${cell.pickup}-1` },
    ]),
  ],
  says: [
    "No. The strip follows the square of the current late, by about its time constant; meanwhile the hand goes on turning. What the ammeter shows is the pickup and the hurry of the hand together.",
    "Only a very slow hand comes near the pickup: the first line takes three quarters of an hour and is still above it. For the pickup itself time trips at steady currents and let THERMAL.FIT learn it.",
  ],
  changes: ({ cell, tables: [ramps] }) => [
    [
      `Ask first: which columns will change when the time constant doubles? Then make ${cell.timeConstant} 120.`,
      "Look for: this breaker alone, and most at the quick hand. What any sound one may do stays.",
    ],
    [
      `Make A${ramps?.bottom} 20.`,
      "Look for: where the highest current ends. At 200 A the magnet of a C does what the strip was too slow for.",
    ],
    [
      `Make A${ramps?.top} 0.004.`,
      "Look for: about 1 % above the pickup, after more than an hour and a half. (0.01 × 25 A ÷ 60 s is that rate.)",
    ],
  ],
  mind: "Turned up by hand is no test of any standard, and near the magnet's range it ends in a large current held too long. Set the current on a link first, then switch it on.",
  explains: ({ cell, tables: [ramps] }) =>
    `"THERMAL.RAMP",A${(ramps?.top ?? 0) + 2},${cell.pickup},${cell.timeConstant}`,
});
