import { yours } from "../looks";
import { lessonSheet, table } from "./lesson";

type Input = "rating";

export const dropAndWatts = lessonSheet<Input>({
  name: "5 Drop and watts",
  title: "5   Drop and watts",
  question:
    "A closed contact should have no resistance, yet a millivoltmeter across the closed breaker shows 0.16 V at 20 A. Is that much, and what does it do?",
  inputs: {
    rating: { label: "Rating, A", value: 20 },
  },
  tables: [
    table<Input, readonly [current: number, drop: number]>(
      [
        [20, 0.16],
        [20, 0.24],
        [10, 0.08],
        [10, 0.13],
      ],
      (down, { cell }) => [
        { heading: "Measured at, A", width: 22, typed: ([current]) => current, look: yours },
        { heading: "Drop, V", width: 12, format: "0.000", typed: ([, drop]) => drop, look: yours },
        { heading: "Heat, W", width: 11, format: "0.00", formula: `=BIMETAL.CONTACT.WATTS(${down("A")},${down("B")})` },
        { heading: "Ω", width: 11, format: "0.0000", formula: `=BIMETAL.CONTACT.OHMS(${down("A")},${down("B")})` },
        {
          heading: "Share of limit",
          width: 15,
          format: "0%",
          formula: `=BIMETAL.CONTACT.SHARE(${down("A")},${down("B")},${cell.rating})`,
        },
        { heading: "Heat at rating, W", width: 18, format: "0.00", answers: true },
        { heading: "Finding", width: 18, answers: true },
      ],
    ),
    table<Input, readonly [pole: number, current: number, drop: number]>(
      [
        [1, 32, 0.11],
        [2, 32, 0.118],
        [3, 32, 0.176],
      ],
      (down) => [
        { heading: "Pole of a three-pole", width: 22, typed: ([pole]) => pole },
        { heading: "at, A", width: 12, typed: ([, current]) => current, look: yours },
        { heading: "its drop, V", width: 11, format: "0.000", typed: ([, , drop]) => drop, look: yours },
        { heading: "its Ω", width: 11, format: "0.0000", formula: `=BIMETAL.CONTACT.OHMS(${down("B")},${down("C")})` },
        {
          heading: "÷ lowest pole",
          width: 15,
          format: "0.00",
          formula: `=BIMETAL.CONTACT.SPREAD(${down("D")})`,
        },
        { heading: "Compared", width: 18, answers: true },
      ],
    ),
  ],
  says: [
    "Drop times current is heat, and it stays inside the breaker. 3.2 W is usual for 20 A (common practice, no source); IEC 60898-1 allows 4.5 W a pole at the rating, warm and settled (from memory: compare with the page).",
    "Half the current makes half the drop and a quarter of the heat. So a drop read at 10 A is scaled with the square before it is compared: 0.13 V looks less than 0.16 V and is worse.",
    "UL 489 sets no limit. There, and in any breaker of several poles, the poles are compared with each other: one that stands out has a contact, a joint or a strip of its own trouble.",
  ],
  changes: ({ tables: [drops, poles] }) => [
    [
      `Ask first: how much heat will 30 A make in the first breaker? Then type 30 into A${drops?.top} and 0.24 into B${drops?.top}.`,
      "Look for: half as much again in current, more than twice the heat, and the same share of the limit.",
    ],
    [
      `Make the drop of the third pole, C${poles?.bottom}, 0.165.`,
      "Look for: exactly 1.5 is not yet a reason to look.",
    ],
    [
      "Make the rating 16.",
      "Look for: the allowance falls from 4.5 to 3.5 W, and yet the shares fall: at 16 A the same pole makes less, by the square.",
    ],
  ],
  mind: "Read the drop on the breaker's own terminals, at the end of a long hold; terminals are then hot enough to burn. Above the limit means clean, exercise and measure again, and no more.",
  explains: ({ cell, tables: [drops] }) => `"CONTACT.SHARE",A${drops?.bottom},B${drops?.bottom},${cell.rating}`,
});
