import type { Book, Sheet } from "../../src/hosts/engine/book";
import { listCells, listLooks } from "../../src/hosts/pane/sheets/list";
import { note, one, title } from "../../src/hosts/pane/sheets/looks";
import {
  fitColumns,
  holdColumns,
  nextColumns,
  type StudiedTrial,
  startColumns,
  trialColumns,
} from "../../src/hosts/pane/sheets/study-columns";
import { page } from "./page";
import { chances, shoot } from "./strips";
import { breakers } from "./trials";

// Twenty more trials of the bench's own reference breaker, all on one evening in air of 25 °C.

const breaker = breakers.find(({ tag }) => tag === "FT-02");
if (!breaker) throw new Error("The bench has lost its reference breaker.");
const { rating, strip, characteristic } = breaker;

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
const trials: readonly StudiedTrial[] = planned.map(([current, watched = 7200, carried = 0]) => ({
  current,
  ...shoot(strip, { rating, current, carried, air: 25, watched }, chance),
  carried: carried || null,
}));

const last = trials.length + 1;
const down = (column: string): string => `${column}2:${column}${last}`;

const columns = [
  ...trialColumns,
  ...fitColumns(`=BIMETAL.THERMAL.FIT(${["B", "C", "D", "E"].map(down)},${rating},"${characteristic}")`),
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

const starts: readonly (readonly [machine: string, current: number, time: number, running: number])[] = [
  ["dust extractor", 69.5, 1.8, 12],
  ["compressor", 82, 0.6, 17],
];
const asked = { rating: String(rating), characteristic: `"${characteristic}"`, air: "25" };
const startsAsked = startColumns({
  ...{ currents: "B18:B19", times: "C18:C19", running: "D18:D19", rating: String(rating), fit },
});

const forecast: Sheet = {
  name: "Questions",
  cells: [
    ...one(0, 0, "What the breaker will do next time, cold and in the same air", title),
    ...listCells({ columns: nextColumns("A4:A8", fit, asked), entries: next, first: 2 }),
    ...listCells({
      columns: holdColumns({ currents: "A12:A15", times: "B12:B15", fit }),
      entries: questions,
      first: 10,
    }),
    ...listCells({ columns: startsAsked, entries: starts, first: 16 }),
    ...one(
      20,
      0,
      "All of this is thermal: of the magnet these trials say nothing, and a motor's first peak may pull it.",
      note,
    ),
  ],
  widths: new Map(startsAsked.map(({ width }, column) => [column, width])),
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
