import type { Book, Sheet } from "../../src/hosts/engine/book";
import { type Column, listCells, listLooks } from "../../src/hosts/pane/sheets/list";
import { note, one, title } from "../../src/hosts/pane/sheets/looks";
import { type Machine, machineColumns, marginColumns } from "../../src/hosts/pane/sheets/motor-starts";
import { characteristics } from "../../src/hosts/pane/sheets/test-log";
import { page } from "./page";

/** The invented machines of the Fernhollow Tool Library: what their nameplates say, and how long a start was seen to last. */
const machines: readonly Machine[] = [
  { name: "compressor", hp: 3, volts: 230, phases: 1, letter: "G", start: 0.6, powerFactor: 0.6 },
  { name: "dust extractor", hp: 2, volts: 230, phases: 1, letter: "J", start: 1.8, powerFactor: 0.5 },
  { name: "table saw", hp: 3, volts: 230, phases: 3, letter: "K", start: 0.5, powerFactor: 0.45 },
];

const machineList = { columns: machineColumns(2, machines.length + 1), entries: machines };
const machineSheet: Sheet = {
  name: "Machines",
  cells: [
    ...listCells(machineList),
    ...one(
      machines.length + 2,
      0,
      "Full load and locked rotor are those of the National Electrical Code's tables; measure a start with a meter that holds its peak where you can.",
      note,
    ),
  ],
  ...listLooks(machineList),
  frozen: { rows: 1, columns: 1 },
};

interface Candidate {
  readonly machine: string;
  readonly rating: number;
  readonly characteristic: string;
}

const candidates: readonly Candidate[] = machines.flatMap(({ name: machine }) =>
  (
    [
      [16, "B"],
      [20, "C"],
      [32, "C"],
      [32, "D"],
      [40, "C"],
      [20, "UL 489 typical"],
      [30, "UL 489 typical"],
    ] as const
  ).map(([rating, characteristic]) => ({ machine, rating, characteristic })),
);

const last = candidates.length + 1;
const all = (...columns: string[]): string => columns.map((column) => `${column}2:${column}${last}`).join(",");
const ofMachine = (column: string) => (row: number) =>
  `=INDEX(Machines!$${column}$2:$${column}$4,MATCH(A${row},Machines!$A$2:$A$4,0))`;

const startColumns: readonly Column<Candidate>[] = [
  { heading: "Machine", width: 16, typed: ({ machine }) => machine, words: machines.map(({ name }) => name) },
  { heading: "Breaker, A", width: 11, typed: ({ rating }) => rating },
  {
    heading: "Characteristic",
    width: 15,
    typed: ({ characteristic }) => characteristic,
    words: characteristics,
  },
  { heading: "Starts with, A", width: 14, format: "0.0", each: ofMachine("J") },
  { heading: "Start lasts, s", width: 13, each: ofMachine("F") },
  { heading: "Runs with, A", width: 13, format: "0.0", each: ofMachine("H") },
  { heading: "Power factor", width: 13, format: "0.00", each: ofMachine("G") },
  ...marginColumns<Candidate>(`=BIMETAL.INRUSH.MARGIN(${all("D", "E", "F", "B", "C", "G")})`),
];

const startList = { columns: startColumns, entries: candidates };
const startSheet: Sheet = {
  name: "Starts",
  cells: listCells(startList),
  ...listLooks(startList),
  frozen: { rows: 1, columns: 3 },
};

const again: Sheet = {
  name: "Again and again",
  cells: [
    ...one(0, 0, "The dust extractor on a breaker the bench knows: one start a minute", title),
    ...one(2, 0, "Starts with, A"),
    { row: 2, column: 1, value: null, formula: "=Machines!J3", style: { format: "0.0" } },
    ...one(3, 0, "Start lasts, s"),
    { row: 3, column: 1, value: null, formula: "=Machines!F3" },
    ...one(4, 0, "Current between the starts, A"),
    ...one(4, 1, 12),
    ...one(5, 0, "Pickup of the breaker, A"),
    ...one(5, 1, 24),
    ...one(6, 0, "Its time constant, s"),
    ...one(6, 1, 60),
    ...one(7, 0, "From start to start, s"),
    ...one(7, 1, 60),
    ...listCells({
      columns: [
        { heading: "Start", width: 18, formula: "=BIMETAL.INRUSH.STARTS(B3,B4,B5,B6,B7,B8)" },
        { heading: "State (1 trips)", width: 12, format: "0.000", answers: true },
      ],
      entries: [],
      first: 9,
      lines: 12,
    }),
  ],
  widths: new Map([
    [0, 30],
    [1, 16],
  ]),
};

const readMe = page("Read me", [
  "Three motors of the Fernhollow Tool Library and the breakers that might feed them",
  "Fernhollow is invented, and so are its machines. Green headings are typed, sand-coloured headings are answered by formulas. Change a rating or a letter and look at the verdict.",
  "The sheet Machines takes what a nameplate says and looks up what the motor draws; its last columns name the smallest rating that is sure to ride through at the worst first peak. The sheet Starts holds each start against what a sound breaker of a characteristic may do at its worst: four margins, each good above 1, and a verdict.",
  "Running: does the breaker carry the motor for ever? Thermal: is its strip slow enough for the start? Magnetic: is the start below the current at which the magnet may pull? Peak: does the first half-cycle, which is higher than the rest, stay below it too?",
  "UL 489 prints no magnetic band, so without the marked setting two margins are not known, and the verdict says so. Its typical form adds one point that no standard prints.",
  "The last sheet starts one motor again and again: each start finds the strip warmer than the one before.",
  "That a breaker rides through a start is no permission. The conductor, its caps for small sizes, the motor's own overload protection and the code where you are decide what may feed a motor; the ceilings on the first sheet are limits and not advice.",
  "A breaker that trips at a start is not cured by a bigger one before its conductor has been looked at.",
]);

export const motorStarts: Book = { sheets: [machineSheet, startSheet, again, readMe] };
