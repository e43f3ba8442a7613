import { type Column, type List, listCells, listLooks, typedIn, typedTable } from "./list";
import { note, one, yours } from "./looks";
import type { ReadySheet } from "./ready-sheet";
import { characteristics } from "./test-log";

/** A motor by its nameplate, and what was seen of its start. */
export interface Machine {
  readonly name: string;
  readonly hp: number;
  readonly volts: number;
  readonly phases: number;
  readonly letter: string;
  /** s */
  readonly start: number;
  readonly powerFactor: number;
}

/** What a nameplate says. */
export const nameplateColumns: readonly Column<Machine>[] = [
  { heading: "Machine", width: 16, typed: ({ name }) => name },
  { heading: "Power, hp", width: 10, typed: ({ hp }) => hp },
  { heading: "Supply, V", width: 10, typed: ({ volts }) => volts },
  { heading: "Phases", width: 8, typed: ({ phases }) => phases },
  { heading: "Code letter", width: 11, typed: ({ letter }) => letter },
  { heading: "Start lasts, s", width: 13, typed: ({ start }) => start },
  { heading: "Power factor", width: 13, format: "0.00", typed: ({ powerFactor }) => powerFactor },
];

/** The nameplates in columns A to G, and what the motors draw in H to Q, between two rows as a sheet counts them. */
export const machineColumns = (top: number, bottom: number): readonly Column<Machine>[] => {
  const all = (...columns: string[]): string => columns.map((column) => `${column}${top}:${column}${bottom}`).join(",");
  return [
    ...nameplateColumns,
    { heading: "Full load, A", width: 12, format: "0.0", formula: `=BIMETAL.INRUSH.MOTOR(${all("B", "C", "D")})` },
    {
      heading: "Locked, low, A",
      width: 15,
      format: "0.0",
      formula: `=BIMETAL.INRUSH.LOCKED(${all("B", "C", "D", "E")})`,
    },
    { heading: "Locked, high, A", width: 16, format: "0.0", answers: true },
    { heading: "First peak, A", width: 13, format: "0.0", formula: `=BIMETAL.INRUSH.PEAK(${all("J", "G")})` },
    { heading: "Peak ÷ r.m.s.", width: 13, format: "0.000", answers: true },
    { heading: "Ceiling, A", width: 11, format: "0.0", formula: `=BIMETAL.INRUSH.CEILING(${all("H")})` },
    { heading: "Next size, A", width: 12, answers: true },
    { heading: "Exception, A", width: 13, format: "0.0", answers: true },
    { heading: "Smallest C, A", width: 13, formula: `=BIMETAL.INRUSH.RATING(${all("J", "F", "H")},"C")` },
    { heading: "Smallest D, A", width: 13, formula: `=BIMETAL.INRUSH.RATING(${all("J", "F", "H")},"D")` },
  ];
};

/** The four margins of a start and the verdict on it. */
export const marginColumns = <Entry>(formula: string): readonly Column<Entry>[] => [
  { heading: "Running", width: 10, format: "0.00", formula },
  { heading: "Thermal", width: 10, format: "0.00", answers: true },
  { heading: "Magnetic", width: 11, format: "0.00", answers: true },
  { heading: "Peak", width: 11, format: "0.00", answers: true },
  { heading: "Verdict", width: 44, answers: true },
];

interface Candidate extends Machine {
  readonly rating: number;
  readonly characteristic: string;
}

const lines = 20;
const above = 2;
const [top, bottom] = [above + 2, above + 1 + lines];
const all = (...columns: string[]): string => columns.map((column) => `${column}${top}:${column}${bottom}`).join(",");

/** An invented motor, to be typed over. */
const sample: Candidate = {
  ...{ name: "dust extractor", hp: 2, volts: 230, phases: 1, letter: "J", start: 1.8, powerFactor: 0.5 },
  ...{ rating: 32, characteristic: "C" },
};

const starts: List<Candidate> = {
  columns: typedIn<Candidate>(yours, [
    ...machineColumns(top, bottom),
    { heading: "Breaker, A", width: 11, typed: ({ rating }) => rating },
    {
      heading: "Characteristic",
      width: 15,
      typed: ({ characteristic }) => characteristic,
      words: characteristics,
    },
    ...marginColumns<Candidate>(`=BIMETAL.INRUSH.MARGIN(${all("J", "F", "H", "R", "S", "G")})`),
  ]),
  entries: [sample],
  first: above,
  lines,
};

/** Nameplates, what the motors draw, and one breaker held against each start. */
export const motorStarts: ReadySheet = {
  name: "Motor starts",
  cells: [
    ...one(
      0,
      0,
      "The yellow line is an invented example: type over it, a line a motor. The four margins are good above 1; riding through is no permission.",
      note,
    ),
    ...listCells(starts),
  ],
  ...listLooks(starts),
  frozen: { rows: above + 1, columns: 1 },
  tables: [typedTable("Motors", starts)],
};
