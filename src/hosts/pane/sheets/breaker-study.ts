import { type Column, type List, listCells, listLooks, typedIn, typedTable } from "./list";
import { note, one, yours } from "./looks";
import type { ReadySheet } from "./ready-sheet";
import { studyChart } from "./study-chart";
import { fitColumns, holdColumns, nextColumns, type StudiedTrial, startColumns, trialColumns } from "./study-columns";
import { characteristics } from "./test-log";

const facts = [
  ["Rating, A", 20],
  ["Characteristic", "C"],
  ["Air, °C", 25],
] as const;
const breaker = { rating: "$B$2", characteristic: "$B$3", air: "$B$4" };

const first = 5;
const lines = 50;
const [top, bottom] = [first + 2, first + 1 + lines];
const trials = `B${top}:B${bottom}`;

/** Nothing is answered before the first trial is there. */
const onceThere = (formula: string, otherwise = ""): string =>
  `=IF(COUNT(${trials})=0,"${otherwise}",${formula.slice(1)})`;

const trialFormula = `=BIMETAL.THERMAL.FIT(${["B", "C", "D", "E"].map((column) => `${column}${top}:${column}${bottom}`).join(",")},${breaker.rating},${breaker.characteristic})`;
const study: List<StudiedTrial> = {
  columns: [...trialColumns, ...fitColumns(onceThere(trialFormula, "Type or paste the trials of one breaker."))],
  entries: [],
  first,
  lines,
};

const fit = `F${top}#`;
const left = study.columns.length + 1;
const asked = <Entry>(columns: readonly Column<Entry>[]): readonly Column<Entry>[] =>
  typedIn(yours, columns).map((column) =>
    column.formula ? { ...column, formula: onceThere(column.formula) } : column,
  );

const next: List<number> = {
  columns: asked(nextColumns(`M${top}:M${top + 3}`, fit, breaker)),
  entries: [27.5, 30, 40, 51],
  first,
  left,
};
const holds: List<readonly [number, number, string]> = {
  columns: asked(holdColumns({ currents: "M14:M15", times: "N14:N15", fit })),
  entries: [
    [24, 3600, "an hour at 1.2 ×"],
    [30, 60, "a minute at 1.5 ×"],
  ],
  first: 12,
  left,
};
const starts: List<readonly [string, number, number, number]> = {
  columns: asked(startColumns({ currents: "N19:N20", times: "O19:O20", running: "P19:P20", fit, rating: "$B$2" })),
  entries: [
    ["a motor", 70, 1.8, 12],
    ["another", 80, 0.6, 17],
  ],
  first: 17,
  left,
};
const looks = [study, next, starts].map((list) => listLooks(list as List<unknown>));

/** One breaker learnt from its trials, and what it will do next. */
export const breakerStudy: ReadySheet = {
  name: "Breaker study",
  cells: [
    ...one(
      0,
      0,
      "One breaker, one air, one pair of leads; rested or warmed for long before each trial. Three trips at least, and holds beside them.",
      note,
    ),
    ...facts.flatMap(([what, value], i) => [...one(i + 1, 0, what), ...one(i + 1, 1, value, yours)]),
    ...one(
      first - 2,
      5,
      "To the right, from column M on: when it trips next, how likely it holds, whether it rides through a start.",
      note,
    ),
    ...listCells(study),
    ...listCells(next),
    ...listCells(holds),
    ...listCells(starts),
    ...one(
      20,
      left,
      "All of this is thermal: of the magnet these trials say nothing. No result here is a release to service.",
      note,
    ),
  ],
  widths: new Map([...looks.flatMap(({ widths }) => [...(widths ?? [])]), [0, 15]]),
  choices: [
    ...(listLooks(study).choices ?? []),
    { block: { row: 2, column: 1, rows: 1, columns: 1 }, words: characteristics },
  ],
  frozen: { rows: first + 1, columns: 1 },
  tables: [typedTable("Study", study)],
  chart: studyChart({ top, bottom, left, ...breaker }),
};
