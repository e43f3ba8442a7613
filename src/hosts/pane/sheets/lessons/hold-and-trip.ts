import { seconds, yours } from "../looks";
import { lessonSheet, table } from "./lesson";

type Input = "rating" | "characteristic";
type Test = readonly [what: string, multiple: number, carried: number];

export const holdAndTrip = lessonSheet<Input>({
  name: "2 Why 1.13 and 1.45",
  title: "2   Why 1.13 and 1.45",
  question:
    "The standard lets a breaker carry 1.13 times its rating for an hour and then, without a pause, 1.45 times. What are these odd numbers for, and why without a pause?",
  inputs: {
    rating: { label: "Rating, A", value: 20 },
    characteristic: { label: "Characteristic", value: "C", words: ["B", "C", "D"] },
  },
  tables: [
    table<Input, Test>(
      [
        ["hold, from cold", 1.13, 0],
        ["trip, straight after", 1.45, 1.13],
        ["the same from cold", 1.45, 0],
        ["between the two", 1.3, 0],
      ],
      (down, { cell }) => [
        { heading: "Test", width: 22, typed: ([what]) => what },
        { heading: "× rating", width: 14, format: "0.00", typed: ([, multiple]) => multiple, look: yours },
        { heading: "Carried before, ×", width: 18, format: "0.00", typed: ([, , carried]) => carried, look: yours },
        { heading: "Current, A", width: 12, format: "0.0#", formula: `=${down("B")}*${cell.rating}` },
        { heading: "Carried, A", width: 12, format: "0.0#", formula: `=${down("C")}*${cell.rating}` },
        {
          heading: "Shortest, s",
          width: 13,
          format: seconds,
          formula: `=BIMETAL.TRIP.RANGE(${down("D")},${cell.rating},${cell.characteristic},${down("E")})`,
        },
        { heading: "Longest, s", width: 13, format: seconds, answers: true },
        {
          heading: "What a sound one does",
          width: 24,
          formula: `=BIMETAL.TRIP.REGION(${down("D")},${cell.rating},${cell.characteristic},${down("E")})`,
        },
      ],
    ),
  ],
  says: [
    "The current that one breaker can just carry for ever is its pickup. Nobody can make two with the same, so the standard only says where it must lie: above 1.13 × (it holds for an hour) and below 1.45 × (it trips within an hour). Between the two a hold and a trip are both right, so a test there judges nothing.",
    "The second test follows without a pause because the strip is then as warm as in a long overload. From cold the same current may take longer than the hour, and the breaker is sound all the same: whoever tests 1.45 × from cold calls good breakers late.",
    "The 1.45 is no accident: a cable is taken to bear 1.45 times what it may carry for as long as a breaker needs to end it (IEC 60364-4-43, from memory: compare with the page).",
  ],
  changes: ({ tables: [tests] }) => [
    [
      `Ask first: how long may a warm breaker take? Then make the 1.13 in C${(tests?.top ?? 0) + 1} a 0.`,
      "Look for: the longest time leaves the hour. The number belongs to the start, not to the current alone.",
    ],
    [
      `Make the 1.3 in B${tests?.bottom} 1.5, then 1.1, then 0.95.`,
      "Look for: at 1.5 × it must trip; at 1.1 × it may trip, but not within the hour; at 0.95 × it holds for ever.",
    ],
    ["Make the rating 80.", "Look for: above 63 A the hour becomes two."],
  ],
  mind: "An hour at these currents makes leads, terminals and breaker hot enough to burn. Somebody stays with it all the time.",
  explains: ({ cell, tables: [tests] }) =>
    `"TRIP.RANGE",D${(tests?.top ?? 0) + 1},${cell.rating},${cell.characteristic},E${(tests?.top ?? 0) + 1}`,
});
