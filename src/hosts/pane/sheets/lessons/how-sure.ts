import { yours } from "../looks";
import { lessonSheet, table } from "./lesson";

type Input = "rating" | "clampPercent" | "clampCounts" | "clampCount" | "voltPercent" | "voltCounts" | "voltCount";

export const howSure = lessonSheet<Input>({
  name: "8 How sure are we",
  title: "8   How sure are we",
  question: "A clamp shows 20.0 A, a voltmeter 0.219 V: 4.38 W, and the limit is 4.5 W. Has the pole passed?",
  inputs: {
    rating: { label: "Rating, A", value: 20 },
    clampPercent: {
      label: "Clamp: % of reading",
      value: 1.5,
      remark: "as its accuracy statement says: ±(1.5 % + 2 counts)",
    },
    clampCounts: { label: "Clamp: counts", value: 2 },
    clampCount: { label: "Clamp: one count, A", value: 0.1 },
    voltPercent: { label: "Voltmeter: % of reading", value: 0.5, remark: "±(0.5 % + 3 counts)" },
    voltCounts: { label: "Voltmeter: counts", value: 3 },
    voltCount: { label: "Voltmeter: one count, V", value: 0.001 },
  },
  tables: [
    table<Input, readonly [current: number, drop: number]>(
      [
        [20, 0.205],
        [20, 0.219],
        [20, 0.236],
      ],
      (down, { cell }) => [
        { heading: "Reading, A", width: 24, format: "0.0", typed: ([current]) => current, look: yours },
        { heading: "Reading, V", width: 13, format: "0.000", typed: ([, drop]) => drop, look: yours },
        {
          heading: "Off by, A",
          width: 11,
          format: "0.00",
          formula: `=BIMETAL.METER.ERROR(${down("A")},${cell.clampPercent},${cell.clampCounts},${cell.clampCount})`,
        },
        { heading: "u, A", width: 10, format: "0.000", answers: true },
        {
          heading: "Off by, V",
          width: 11,
          format: "0.0000",
          formula: `=BIMETAL.METER.ERROR(${down("B")},${cell.voltPercent},${cell.voltCounts},${cell.voltCount})`,
        },
        { heading: "u, V", width: 10, format: "0.0000", answers: true },
        {
          heading: "Heat, W",
          width: 10,
          format: "0.00",
          formula: `=BIMETAL.METER.WATTS(${down("A")},${down("D")},${down("B")},${down("F")})`,
        },
        { heading: "u, W", width: 9, format: "0.000", answers: true },
        { heading: "± 95 %, W", width: 11, format: "0.00", answers: true },
        {
          heading: "Probability",
          width: 12,
          format: "0.0%",
          formula: `=BIMETAL.METER.CONFORMS(${down("G")},${down("H")},"none",INDEX(BIMETAL.CONTACT.LIMIT(${cell.rating}),1,1))`,
        },
        { heading: "Verdict", width: 20, answers: true },
      ],
    ),
  ],
  says: [
    "It is too close to call. Each meter may be off by its statement, and neither says in which direction; together they leave the heat uncertain by about 0.16 W, and 0.12 W are left to the limit. (u is a standard uncertainty: what a meter may be off by, divided by √3. Twice the u of the heat is what stands under ± 95 %. The probability is that of lying within the limit.)",
    "The squares of the two parts add, so the larger one decides: a better voltmeter helps little while the clamp stays as it is. Only a value that keeps clear of the limit by its uncertainty has passed or failed; between lies honest doubt.",
  ],
  changes: ({ cell }) => [
    [
      `Ask first: which meter is worth replacing? Then make the voltmeter perfect: 0.01 in ${cell.voltPercent} and 0 in ${cell.voltCounts}.`,
      "Look for: the verdict does not change.",
    ],
    [
      `Put the voltmeter back, and take a better clamp: 0.5 in ${cell.clampPercent} and 0.01 in ${cell.clampCount}.`,
      "Look for: the same reading, and now it is decided.",
    ],
    [
      `Or keep the old clamp and lay ten turns through it: 1.5 in ${cell.clampPercent}, and one count in ${cell.clampCount} is worth 0.01 A.`,
      "Look for: the uncertainty in D falls by a third, for the counts only; the per cent stays, and so does the doubt.",
    ],
  ],
  mind: "The limit holds at the rating, warm and settled, and is from memory: compare it with the page before anything is rejected by it. A statement about one value is no release to service.",
  explains: ({ cell, tables: [readings] }) =>
    `"METER.CONFORMS",G${(readings?.top ?? 0) + 1},H${(readings?.top ?? 0) + 1},"none",INDEX(BIMETAL.CONTACT.LIMIT(${cell.rating}),1,1)`,
});
