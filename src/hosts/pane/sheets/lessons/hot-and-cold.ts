import { seconds, yours } from "../looks";
import { lessonSheet, table } from "./lesson";

type Input = "rating" | "characteristic" | "current" | "timeConstant";

export const hotAndCold = lessonSheet<Input>({
  name: "4 Hot and cold",
  title: "4   Hot and cold",
  question:
    "The same breaker at the same 40 A: quicker on a hot afternoon than in the morning, and quicker again the second time. Is it wearing out?",
  inputs: {
    rating: { label: "Rating, A", value: 20 },
    characteristic: { label: "Characteristic", value: "C", words: ["B", "C", "D"] },
    current: { label: "Test current, A", value: 40 },
    timeConstant: { label: "Time constant, s", value: 60, remark: "of one breaker, for the rests below" },
  },
  tables: [
    table<Input, readonly [air: number, carried: number]>(
      [
        [30, 0],
        [5, 0],
        [45, 0],
        [30, 16],
        [45, 16],
      ],
      (down, { cell }) => [
        { heading: "Air, °C", width: 24, typed: ([air]) => air, look: yours },
        { heading: "Carried before, A", width: 18, typed: ([, carried]) => carried, look: yours },
        {
          heading: "Rating there, A",
          width: 16,
          format: "0.0",
          formula: `=BIMETAL.TRIP.RERATED(${cell.rating},${down("A")})`,
        },
        {
          heading: "Shortest, s",
          width: 13,
          format: seconds,
          formula: `=BIMETAL.TRIP.RANGE(${cell.current},${cell.rating},${cell.characteristic},${down("B")},${down("A")})`,
        },
        { heading: "Longest, s", width: 13, format: seconds, answers: true },
      ],
    ),
    table<Input, number>([0.5, 0.1, 0.01], (down, { cell }) => [
      { heading: "Of the heat is left", width: 24, format: "0%", typed: (left) => left, look: yours },
      {
        heading: "after a rest of, s",
        width: 18,
        format: "0",
        formula: `=BIMETAL.THERMAL.REST(1,${down("A")},${cell.timeConstant})`,
      },
    ]),
  ],
  says: [
    "The strip trips at one temperature of its own. Warm air has brought it part of the way, and so has a current before: there is less left to go. It is not wear; it is the start that differs.",
    "So a log without the air and without what was carried before compares what cannot be compared, and a repeat without rest looks early. Heat leaves the strip by the same share in equal times: after a trip about five time constants make it cold.",
  ],
  changes: ({ cell, tables: [starts, rests] }) => [
    [
      `Ask first: what will 30 °C and 19 A before do? Then type 19 into B${(starts?.top ?? 0) + 3}.`,
      "Look for: a strip that carried nearly its rating needs little more.",
    ],
    [`Make A${starts?.top} 77.`, "Look for: the refusal. 77 °F is 25 °C, and the cell says what is wanted."],
    [
      `Make the time constant ${cell.timeConstant} 300.`,
      `Look for: the rests from row ${rests?.top} on; the slowest sound breakers want more than twenty minutes.`,
    ],
  ],
  mind: "The rating there moves with the strip; it is never a permitted load. Wait, too, until the terminals are at room temperature: a housing cools more slowly than its strip.",
  explains: ({ cell, tables: [starts] }) =>
    `"TRIP.RANGE",${cell.current},${cell.rating},${cell.characteristic},B${starts?.bottom},A${starts?.bottom}`,
});
