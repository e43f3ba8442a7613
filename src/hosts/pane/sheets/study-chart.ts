import { answerHeading, note, one } from "./looks";
import type { Block, ReadyChart } from "./ready-sheet";

/** TRIP.CURVE has sixty currents and both sides of at most four edges; some room is left. */
const rows = 75;
/** s: where the axis ends, and where the chart puts what lies beyond its ends. */
const [foot, head, beyond] = [0.001, 10000, 1e6];

interface Place {
  /** The trials' first and last row as a sheet counts them. */
  readonly top: number;
  readonly bottom: number;
  /** The column that the chart begins in, counted from 0. */
  readonly left: number;
  readonly rating: string;
  readonly characteristic: string;
}

/** The trials of a study in the band of any sound breaker, with the fitted breaker's own line, on log axes. */
export const studyChart = ({ top, bottom, left, rating, characteristic }: Place): ReadyChart => {
  const last = top + rows - 1;
  const down = (column: string): string => `${column}${top}:${column}${last}`;
  const column = (at: number, length = rows): Block => ({ row: top - 1, column: at, rows: length, columns: 1 });
  const within = (cells: string): string =>
    `=IF(${down("Z")}="",NA(),IF(ISNUMBER(${cells}),IF(${cells}<${foot},${foot},${cells}),${beyond}))`;
  const trialsThat = (outcome: string): string => `=IF(D${top}:D${bottom}="${outcome}",C${top}:C${bottom},NA())`;
  const own = `BIMETAL.THERMAL.TIME(${down("Z")},G${top},G${top + 1})`;
  const helped: readonly (readonly [heading: string, formula: string | null])[] = [
    ["Current, A", `=BIMETAL.TRIP.CURVE(${rating},${characteristic})`],
    ["×", null],
    ["Shortest, s", null],
    ["Longest, s", null],
    ["Drawn shortest", within(down("AB"))],
    ["Drawn longest", within(down("AC"))],
    ["This breaker", `=IF(ISNUMBER(${down("Z")})*ISNUMBER(G${top}),IF(ISNUMBER(${own}),${own},NA()),NA())`],
    ["Tripped", trialsThat("tripped")],
    ["Held", trialsThat("held")],
  ];
  const at = 25;
  const trials = (place: number) => ({ x: column(1, bottom - top + 1), y: column(at + place, bottom - top + 1) });
  return {
    kind: "scatter",
    title: "Trials in the band of a sound breaker",
    x: { title: "Current, A", scale: "log" },
    y: { title: "Time, s", scale: "log", from: foot, to: head },
    series: [
      { name: "shortest", x: column(at), y: column(at + 4), drawn: "line", color: "79325A" },
      { name: "longest", x: column(at), y: column(at + 5), drawn: "line", color: "79325A" },
      { name: "this breaker", x: column(at), y: column(at + 6), drawn: "line", color: "14645B" },
      { name: "tripped", ...trials(7), drawn: "points", color: "14645B" },
      { name: "held", ...trials(8), drawn: "points", color: "77540C" },
    ],
    at: { row: 22, column: left, rows: 26, columns: 7 },
    cells: [
      ...one(
        top - 4,
        at,
        `For the chart. What has no place on its axis: 0 s is drawn at ${foot} s, for ever beyond its top, #N/A not at all.`,
        note,
      ),
      ...helped.flatMap(([heading, formula], i) => [
        ...one(top - 2, at + i, heading, answerHeading),
        ...(formula ? one(top - 1, at + i, formula) : []),
      ]),
    ],
  };
};
