import type { Book, Sheet } from "../../src/hosts/engine/book";
import { type Column, listCells, listLooks } from "./list";
import { note, one, page, seconds, title } from "./looks";
import { chances, shoot } from "./strips";
import { breakers } from "./trials";

// Twenty more trials of the bench's own reference breaker, all on one evening in air of 25 °C.

const breaker = breakers.find(({ tag }) => tag === "FT-02");
if (!breaker) throw new Error("The bench has lost its reference breaker.");
const { rating, strip, characteristic } = breaker;

interface Trial {
  readonly current: number;
  readonly time: number;
  readonly outcome: string;
  readonly carried: number | null;
}

/** A, s after which the tester switched off, and A carried for an hour before. */
const planned: readonly (readonly [current: number, watched?: number, carried?: number])[] = [
  ...([
    [22.6, 3600],
    [24, 1800],
    [25, 1800],
    [25, 1800],
  ] as const),
  ...([[27], [27], [28], [30], [30], [30]] as const),
  ...([[36], [36], [40], [40], [40], [51], [51], [51]] as const),
  ...([
    [30, 7200, 16],
    [40, 7200, 16],
  ] as const),
];

const chance = chances(1702826);
const trials: readonly Trial[] = planned.map(([current, watched = 7200, carried = 0]) => ({
  current,
  ...shoot(strip, { rating, current, carried, air: 25, watched }, chance),
  carried: carried || null,
}));

const last = trials.length + 1;
const down = (column: string): string => `${column}2:${column}${last}`;

/** The three estimates and the corrected scatter; what follows is for the other formulas. */
const estimates = (line: number): string | undefined => (line < 4 ? "0.0000" : undefined);

const columns: readonly Column<Trial>[] = [
  { heading: "Trial", width: 7, typed: (_, line) => line },
  { heading: "Current, A", width: 12, typed: ({ current }) => current },
  { heading: "Time, s", width: 10, typed: ({ time }) => time },
  { heading: "Outcome", width: 10, typed: ({ outcome }) => outcome, words: ["tripped", "held"] },
  { heading: "Carried before, A", width: 19, typed: ({ carried }) => carried },
  {
    heading: "What the trials say",
    width: 32,
    formula: `=BIMETAL.THERMAL.FIT(${["B", "C", "D", "E"].map(down)},${rating},"${characteristic}")`,
  },
  { heading: "Value", width: 13, format: estimates, answers: true },
  { heading: "Standard error", width: 16, format: estimates, answers: true },
  { heading: "Low", width: 15, format: estimates, answers: true },
  { heading: "High", width: 11, format: estimates, answers: true },
  { heading: "Note", width: 50, answers: true },
];

const list = { columns, entries: trials, lines: 50 };
const study: Sheet = {
  name: "Study",
  cells: listCells(list),
  ...listLooks(list),
  frozen: { rows: 1, columns: 1 },
};

const fit = "Study!F2#";
const next = [27.5, 30, 40, 51, 69.5];
const questions: readonly (readonly [current: number, time: number, what: string])[] = [
  [24, 3600, "an hour at 1.2 times its rating"],
  [27.5, 110, "a heater that is a little too much"],
  [30, 75, "a minute and a quarter at one and a half times its rating"],
  [69.5, 1.8, "the start of the dust extractor"],
];

const nextColumns: readonly Column<number>[] = [
  { heading: "Next trial at, A", width: 16, typed: (current) => current },
  { heading: "Low, s", width: 12, format: seconds, formula: `=BIMETAL.THERMAL.FORECAST(A4:A8,${fit})` },
  { heading: "Median, s", width: 13, format: seconds, answers: true },
  { heading: "High, s", width: 12, format: seconds, answers: true },
  {
    heading: "Any sound C, s",
    width: 15,
    format: seconds,
    formula: `=BIMETAL.TRIP.RANGE(A4:A8,${rating},"${characteristic}",,25)`,
  },
  { heading: "to, s", width: 12, format: seconds, answers: true },
];

/** Nothing above the pickup's lower limit is certain, so nothing is rounded up to 1. */
const likely = '[=1]0;[>0.9999]"> 0.9999";0.0000';

const holdColumns: readonly Column<(typeof questions)[number]>[] = [
  { heading: "Does it hold, A", width: 16, typed: ([current]) => current },
  { heading: "for, s", width: 12, typed: ([, time]) => time },
  { heading: "Probability", width: 13, format: likely, formula: `=BIMETAL.THERMAL.HOLDS(A12:A15,B12:B15,${fit})` },
  { heading: "What it is", width: 12, typed: ([, , what]) => what },
];

const starts: readonly (readonly [machine: string, current: number, time: number, running: number])[] = [
  ["dust extractor", 69.5, 1.8, 12],
  ["compressor", 82, 0.6, 17],
];

const startColumns: readonly Column<(typeof starts)[number]>[] = [
  { heading: "Rides through", width: 16, typed: ([machine]) => machine },
  { heading: "Starts with, A", width: 14, typed: ([, current]) => current },
  { heading: "lasts, s", width: 13, typed: ([, , time]) => time },
  { heading: "runs with, A", width: 12, typed: ([, , , running]) => running },
  {
    heading: "Running",
    width: 15,
    format: "0.00",
    formula: `=BIMETAL.INRUSH.MARGIN(B18:B19,C18:C19,D18:D19,${rating},${fit})`,
  },
  { heading: "Thermal", width: 12, format: "0.00", answers: true },
  { heading: "Magnetic", width: 12, answers: true },
  { heading: "Peak", width: 12, answers: true },
  { heading: "Verdict", width: 44, answers: true },
];

const forecast: Sheet = {
  name: "Questions",
  cells: [
    ...one(0, 0, "What the breaker will do next time, cold and in the same air", title),
    ...listCells({ columns: nextColumns, entries: next, first: 2 }),
    ...listCells({ columns: holdColumns, entries: questions, first: 10 }),
    ...listCells({ columns: startColumns, entries: starts, first: 16 }),
    ...one(
      20,
      0,
      "All of this is thermal: of the magnet these trials say nothing, and a motor's first peak may pull it.",
      note,
    ),
  ],
  widths: new Map(startColumns.map(({ width }, column) => [column, width])),
};

const readMe = page("Read me", [
  "One breaker, learnt from its own trials",
  "Fernhollow is invented, and so are this breaker and its trials. Twenty shots at one 20 A breaker of characteristic C: sixteen trips, four holds, two of the trips from warm.",
  "On the sheet Study one formula makes of them the breaker's pickup, time constant and scatter, each with the limits between which it lies with 95 % confidence. What stands below is there for the other formulas: the whole block is handed on as Study!F2#.",
  "The sheet Questions asks when the next trial will trip, and how likely the breaker is to carry a current for a while. Beside it stands what any sound breaker of its kind may do: far less is sure of those, and a start at which a C of 20 A may trip is no trouble for this one.",
  "It is this one breaker, in that air, on those leads, as it was on that evening. Another of the same kind off the same shelf is another breaker.",
  "A result on the bench is not a release to service.",
]);

export const breakerStudy: Book = { sheets: [study, forecast, readMe] };
