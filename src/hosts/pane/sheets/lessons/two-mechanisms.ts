import { seconds } from "../looks";
import { characteristics } from "../test-log";
import { lessonSheet, table } from "./lesson";

type Input = "rating" | "characteristic";

export const twoMechanisms = lessonSheet<Input>({
  name: "1 Two mechanisms",
  title: "1   Two mechanisms",
  question:
    "At 51 A a 20 A breaker of the Fernhollow bench takes some seconds; at 200 A it has tripped before anybody can say so. Why is one slow and the other not?",
  inputs: {
    rating: { label: "Rating, A", value: 20 },
    characteristic: {
      label: "Characteristic",
      value: "C",
      remark: "B, C or D: the class printed before the rating, as in C20",
      words: characteristics,
    },
  },
  tables: [
    table<Input, number>([20, 25, 51, 100, 150, 200], (down, { cell }) => [
      { heading: "Current, A", width: 22, typed: (current) => current },
      { heading: "× rating", width: 16, format: "0.00", formula: `=${down("A")}/${cell.rating}` },
      {
        heading: "Shortest, s",
        width: 14,
        format: seconds,
        formula: `=BIMETAL.TRIP.RANGE(${down("A")},${cell.rating},${cell.characteristic})`,
      },
      { heading: "Longest, s", width: 14, format: seconds, answers: true },
      {
        heading: "What a sound one does",
        width: 28,
        formula: `=BIMETAL.TRIP.REGION(${down("A")},${cell.rating},${cell.characteristic})`,
      },
    ]),
    table<Input, string>(["B", "C", "D"], (down, { cell }) => [
      { heading: "Letter", width: 22, typed: (letter) => letter },
      {
        heading: "Magnet not to, A",
        width: 18,
        formula: `=BIMETAL.TRIP.MAGNETIC(${cell.rating},${down("A")})`,
      },
      { heading: "Magnet from, A", width: 17, answers: true },
    ]),
  ],
  says: [
    "Two things can let the latch go. A strip of two metals bends as it warms: its heat goes with the square of the current, and warming takes time. And a coil pulls as soon as the current is strong enough: it does not wait.",
    "The strip decides the slow lines, the magnet the quick ones. Between them, and between shortest and longest, a sound breaker may do either, because no two are alike.",
  ],
  changes: ({ cell, tables: [currents] }) => [
    [
      `Ask first: which lines will change when the C becomes a B? Then type B into ${cell.characteristic}; then D.`,
      "Look for: the lines up to 51 A stay as they are. The letter moves the magnet alone.",
    ],
    [
      `Type UL 489 into ${cell.characteristic}.`,
      'Look for: "magnetic not known". That document prints no band, so nothing is claimed; the setting marked on the breaker would tell.',
    ],
    [`Change a current in A${currents?.top} to A${currents?.bottom}.`, "Look for: where the shortest time falls to 0."],
  ],
  mind: "A current in the range of the magnet is tried only with a source that switches itself off, bolted leads and nobody near: it burns, and running it up by hand can destroy the breaker.",
  explains: ({ cell, tables: [currents] }) =>
    `"TRIP.RANGE",A${(currents?.top ?? 0) + 2},${cell.rating},${cell.characteristic}`,
});
