import { type List, listCells, listLooks } from "./list";
import { note, one, seconds, title, yours } from "./looks";
import type { ReadySheet } from "./ready-sheet";
import { characteristics } from "./test-log";

/** Invented values, to be typed over. */
const facts: readonly (readonly [what: string, value: string | number | null, remark: string])[] = [
  ["Breaker", "FT-21", "its tag"],
  ["Rating, A", 20, ""],
  ["Characteristic", "C", ""],
  ["Poles", 1, "tested in series, all loaded"],
  ["Leads", "2.5 mm²", 'their size with its unit: "2.5 mm²", "12 AWG"'],
  ["Both leads, m", 2, "there and back, together"],
  ["Drop at the rating, V", 0.2, "across the breaker, all poles; as read, or a guess"],
  ["Source, V", 5, "open circuit, at the tap that is set"],
  ["Marked magnet setting, A", null, "if one is marked (IEC 60947-2, UL 489); else blank"],
];

const first = facts.length + 3;
const lines = 14;
const [top, bottom] = [first + 2, first + 1 + lines];
const currents = `B${top}:B${bottom}`;
const watched = `E${top}:E${bottom}`;

/** s: longer than this a lead gives heat away while it warms, and its size is a matter of its ampacity. */
const shortShot = 5;

const plan: List<never> = {
  columns: [
    {
      heading: "Step",
      width: 52,
      formula: '=IF(B11="",BIMETAL.BENCH.PLAN(B4,B5,B6),BIMETAL.BENCH.PLAN(B4,B5,B6,,B11))',
    },
    { heading: "Current, A", width: 17, format: "0.0", answers: true },
    { heading: "Shortest, s", width: 12, format: seconds, answers: true },
    { heading: "Longest, s", width: 12, format: seconds, answers: true },
    { heading: "Stop watching at, s", width: 20, format: seconds, answers: true },
    { heading: "Rest before, s", width: 15, format: seconds, answers: true },
    { heading: "Caution", width: 60, answers: true },
  ],
  entries: [],
  first,
  lines,
};

/** What each line of the plan asks of the source and does to the leads. The breaker's drop goes with the current. */
const loop: List<never> = {
  columns: [
    { heading: "For the step", width: 52, formula: `=A${top}:A${bottom}&""` },
    {
      heading: "Source gives, V",
      width: 15,
      format: "0.00",
      formula: `=IF(ISNUMBER(${currents}),BIMETAL.BENCH.SOURCE(${currents},B7,B8,B9*${currents}/B4,,B10),"")`,
    },
    { heading: "VA", width: 12, format: "0", answers: true },
    { heading: "Reaches, A", width: 12, format: "0", answers: true },
    {
      heading: "Leads warm by, K",
      width: 20,
      format: "0.0",
      formula: `=IF(ISNUMBER(${currents}),IF(${watched}<=${shortShot},BIMETAL.BENCH.LEAD(${currents},${watched},B7),""),"")`,
    },
    { heading: "to, °C", width: 15, format: "0", answers: true },
    { heading: "PVC bears, °C", width: 15, format: "0", answers: true },
    { heading: "Finding", width: 44, answers: true },
  ],
  entries: [],
  first: first + lines + 2,
  lines,
};
/** One breaker's tests in their order, and what source and leads must bear. */
export const benchPlan: ReadySheet = {
  name: "Bench plan",
  cells: [
    ...one(0, 0, "The tests of one breaker, line by line", title),
    ...one(1, 0, "The breaker is out of its board, which was switched off, locked out and proved dead.", note),
    ...one(
      first - 1,
      0,
      "The source's voltage is low, its current burns: bolted leads, hands off, let lead and breaker cool.",
      note,
    ),
    ...facts.flatMap(([what, value, remark], i) => [
      ...one(i + 2, 0, what),
      ...one(i + 2, 1, value, yours),
      ...(remark ? one(i + 2, 2, remark, note) : []),
    ]),
    ...listCells(plan),
    ...listCells(loop),
    ...one(
      first + 2 * lines + 3,
      0,
      `Leads are worked out for shots of up to ${shortShot} s; for longer ones their ampacity decides.`,
      note,
    ),
  ],
  widths: new Map([...(listLooks(loop).widths ?? []), ...(listLooks(plan).widths ?? [])]),
  choices: [{ block: { row: 4, column: 1, rows: 1, columns: 1 }, words: characteristics }],
};
