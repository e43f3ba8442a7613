import type { Cell } from "../../../definition/cells";
import { characteristic as known } from "../../../functions/arguments/characteristic";
import { type Column, type List, listCells, listLooks, typedTable } from "./list";
import { seconds } from "./looks";
import type { ReadySheet } from "./ready-sheet";

/** One line of a test log as it was typed in; null is an empty cell. What was typed amiss may be text. */
export interface LoggedTrial {
  /** Counted as spreadsheets count days. */
  readonly day: number | null;
  readonly breaker: string;
  readonly rating: number | null;
  readonly characteristic: string;
  readonly poles: number;
  readonly state: "as found" | "exercised";
  readonly current: number | string | null;
  readonly drop: number | null;
  readonly time: number | string | null;
  readonly outcome: string | null;
  readonly carried: number | null;
  readonly rest: number | null;
  readonly air: number | null;
  readonly leads: string;
  readonly remarks: string | null;
}

/** The characteristics that a cell offers. */
export const characteristics = known.choices ?? [];

/** The columns of a test log that judges so many lines; those still empty stay empty. `tags`: the breakers it offers. */
export const logColumns = (lines: number, tags?: readonly string[]): readonly Column<LoggedTrial>[] => {
  const down = (column: string): string => `${column}2:${column}${lines + 1}`;
  const all = (...columns: string[]): string => columns.map(down).join(",");
  return [
    { heading: "Trial", width: 6, typed: (_, line) => line },
    { heading: "Date", width: 11, format: "yyyy-mm-dd", typed: ({ day }) => day },
    { heading: "Breaker", width: 10, typed: ({ breaker }) => breaker, words: tags },
    { heading: "Rating, A", width: 10, typed: ({ rating }) => rating },
    { heading: "Characteristic", width: 15, typed: ({ characteristic }) => characteristic, words: characteristics },
    { heading: "Poles", width: 7, typed: ({ poles }) => poles },
    { heading: "State", width: 11, typed: ({ state }) => state, words: ["as found", "exercised"] },
    { heading: "Current, A", width: 12, typed: ({ current }) => current },
    { heading: "Drop, V", width: 9, format: "0.000", typed: ({ drop }) => drop },
    { heading: "Time, s", width: 9, typed: ({ time }) => time, typedFormat: clockTime },
    { heading: "Outcome", width: 10, typed: ({ outcome }) => outcome, words: ["tripped", "held"] },
    { heading: "Carried before, A", width: 19, typed: ({ carried }) => carried },
    { heading: "Rest, min", width: 11, typed: ({ rest }) => rest },
    { heading: "Air, °C", width: 8, typed: ({ air }) => air },
    { heading: "Leads", width: 9, typed: ({ leads }) => leads },
    { heading: "Remarks", width: 35, typed: ({ remarks }) => remarks },
    {
      heading: "Shortest, s",
      width: 12,
      format: seconds,
      formula: `=BIMETAL.TRIP.RANGE(${all("H", "D", "E", "L", "N")})`,
    },
    { heading: "Longest, s", width: 12, format: seconds, answers: true },
    {
      heading: "Verdict",
      width: 27,
      formula: `=BIMETAL.TRIP.VERDICT(${all("H", "J", "D", "E", "K", "L", "N")})`,
    },
    { heading: "Why", width: 70, answers: true },
    {
      heading: "Heat, W",
      width: 9,
      format: "0.00",
      formula: `=IF(${down("I")}="","",BIMETAL.CONTACT.WATTS(${all("H", "I")}))`,
    },
    {
      heading: "Share of limit",
      width: 16,
      format: "0%",
      // UL 489 sets no limit, so its breakers have no share.
      formula: `=IF((${down("I")}="")+(LEFT(${down("E")},2)="UL"),"",BIMETAL.CONTACT.SHARE(${all("H", "I", "D")}))`,
    },
    { heading: "Heat at rating, W", width: 19, format: "0.00_)", answers: true },
    { heading: "Finding", width: 16, answers: true },
  ];
};

/** A slip that looks right: a time that stands in its cell as hours, minutes and seconds. */
const clockTime = (time: Cell): string | undefined =>
  typeof time === "number" && time < 0.001 ? "h:mm:ss" : undefined;

const lines = 200;

/** Every breaker of the log in one line, once there are any. */
const sumColumns: readonly Column<never>[] = [
  {
    heading: "Breaker",
    width: 12,
    formula: `=IF(COUNTA(C2:C${lines + 1})=0,"",BIMETAL.BENCH.SUMMARY(C2:C${lines + 1},S2:S${lines + 1}))`,
  },
  { heading: "Judged", width: 9, format: "0_)", answers: true },
  { heading: "In range", width: 10, format: "0_)", answers: true },
  { heading: "Out", width: 7, format: "0_)", answers: true },
  { heading: "Undecided", width: 12, format: "0_)", answers: true },
  { heading: "Not counted", width: 20, answers: true },
];

const trials: List<LoggedTrial> = { columns: logColumns(lines), entries: [], lines };
const sums: List<never> = { columns: sumColumns, entries: [], left: trials.columns.length + 1, lines: 40 };
const looks = listLooks(trials);

/** An empty test log. */
export const testLog: ReadySheet = {
  name: "Test log",
  cells: [...listCells(trials), ...listCells(sums)],
  ...looks,
  widths: new Map([...(looks.widths ?? []), ...(listLooks(sums).widths ?? [])]),
  frozen: { rows: 1, columns: 3 },
  tables: [typedTable("Trials", trials)],
};
