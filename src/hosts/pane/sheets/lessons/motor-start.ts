import { yours } from "../looks";
import { type Machine, marginColumns, nameplateColumns } from "../motor-starts";
import { characteristics } from "../test-log";
import { lessonSheet, table } from "./lesson";

type Candidate = readonly [rating: number, characteristic: string];

const machines: readonly Machine[] = [
  { name: "dust extractor", hp: 2, volts: 230, phases: 1, letter: "J", start: 1.8, powerFactor: 0.5 },
  { name: "compressor", hp: 3, volts: 230, phases: 1, letter: "G", start: 0.6, powerFactor: 0.6 },
];

export const motorStart = lessonSheet<never>({
  name: "6 A motor start",
  title: "6   A motor start",
  question:
    "The dust extractor runs with 12 A, and the 20 A breaker trips when it starts, not every time. Is the breaker bad?",
  inputs: {},
  tables: [
    table<never, Machine>(machines, (down) => [
      ...nameplateColumns.map((column, i) => (i === 0 ? column : { ...column, look: yours })),
      {
        heading: "Runs with, A",
        width: 14,
        format: "0.0",
        formula: `=BIMETAL.INRUSH.MOTOR(${down("B")},${down("C")},${down("D")})`,
      },
      {
        heading: "Starts: low, A",
        width: 15,
        format: "0.0",
        formula: `=BIMETAL.INRUSH.LOCKED(${down("B")},${down("C")},${down("D")},${down("E")})`,
      },
      { heading: "Starts: high, A", width: 15, format: "0.0", answers: true },
      {
        heading: "First peak, A",
        width: 14,
        format: "0.0",
        formula: `=BIMETAL.INRUSH.PEAK(${down("J")},${down("G")})`,
      },
      { heading: "Peak ÷ r.m.s.", width: 14, format: "0.000", answers: true },
    ]),
    table<never, Candidate>(
      [
        [20, "C"],
        [32, "C"],
        [40, "C"],
        [32, "D"],
      ],
      (down, { tables: [plates] }) => {
        const start = `J${plates?.top},F${plates?.top},H${plates?.top}`;
        return [
          { heading: "Breaker, A", width: 16, typed: ([rating]) => rating, format: "0_)", look: yours },
          { heading: "Characteristic", width: 15, typed: ([, letter]) => letter, words: characteristics, look: yours },
          ...marginColumns<Candidate>(`=BIMETAL.INRUSH.MARGIN(${start},${down("A")},${down("B")},G${plates?.top})`).map(
            (column) => (column.heading === "Verdict" ? { ...column, width: 16 } : column),
          ),
        ];
      },
    ),
  ],
  says: [
    "No. A motor at rest is nearly a short circuit: until it turns it draws several times its running current, here for 1.8 s. A sound 20 A breaker may trip within half a second at that current, and may also take half a minute. This one happens to lie near the start, so it trips now and then. (The breakers below are held against the first line.)",
    "Four margins, each good above 1. Running: it carries the motor for ever. Thermal: its strip is slow enough for the start. Magnetic: the start stays below the magnet's range. Peak: so does the first half-cycle, which is higher than the rest.",
    "A D instead of a C moves the magnet alone, so it mends nothing here: the thermal margin of both 32 A breakers is the same. What helps is a larger rating, if the conductor allows it, or a shorter start.",
  ],
  changes: ({ tables: [plates] }) => [
    [
      `Ask first: what if the bearings were greased and the start took 1.2 s? Then type 1.2 into F${plates?.top}.`,
      "Look for: the thermal margin of the 32 A breakers.",
    ],
    [
      `Type the compressor's line over the extractor's: 3, G, 0.6 and 0.6 in row ${plates?.top}.`,
      "Look for: a shorter, higher start, which asks more of the magnet and less of the strip.",
    ],
    [
      `Make the power factor in G${plates?.top} 0.2.`,
      "Look for: the first peak, which grows with a start that lags more, and the last margin.",
    ],
  ],
  mind: "Riding through is no permission. The conductor, the motor's own overload protection and the code where you are decide; a breaker that trips at a start is not cured by a bigger one before its conductor has been looked at.",
  explains: ({ tables: [plates, breakers] }) =>
    `"INRUSH.MARGIN",J${plates?.top},F${plates?.top},H${plates?.top},A${(breakers?.top ?? 0) + 1},B${(breakers?.top ?? 0) + 1},G${plates?.top}`,
});
