import type { Book, Sheet, SheetCell } from "../../src/hosts/engine/book";
import { type Column, listCells, listLooks } from "../../src/hosts/pane/sheets/list";
import { note, one, title, yours } from "../../src/hosts/pane/sheets/looks";
import { characteristics, logColumns } from "../../src/hosts/pane/sheets/test-log";
import { page } from "./page";
import { type Breaker, breakers, trials } from "./trials";

/** Lines of the log that the formulas judge; those still empty stay empty. */
const lines = 120;
const trialList = {
  columns: logColumns(
    lines,
    breakers.map(({ tag }) => tag),
  ),
  entries: trials,
  lines,
};
const log: Sheet = {
  name: "Log",
  cells: listCells(trialList),
  ...listLooks(trialList),
  frozen: { rows: 1, columns: 3 },
};

const inLog = (column: string): string => `Log!$${column}$2:$${column}$${lines + 1}`;
const breakerColumns: readonly Column<Breaker>[] = [
  { heading: "Breaker", width: 10, typed: ({ tag }) => tag },
  { heading: "Rating, A", width: 10, typed: ({ rating }) => rating },
  { heading: "Characteristic", width: 15, typed: ({ characteristic }) => characteristic },
  { heading: "Poles", width: 7, typed: ({ poles }) => poles },
  { heading: "Serves", width: 26, typed: ({ serves }) => serves },
  { heading: "Summary of", width: 12, formula: `=BIMETAL.BENCH.SUMMARY(${inLog("C")},${inLog("S")})` },
  { heading: "Judged", width: 9, format: "0_)", answers: true },
  { heading: "In range", width: 10, format: "0_)", answers: true },
  { heading: "Out", width: 7, format: "0_)", answers: true },
  { heading: "Undecided", width: 12, format: "0_)", answers: true },
  { heading: "Not counted", width: 20, answers: true },
  {
    heading: "Warm drop, V",
    width: 15,
    format: "0.000",
    each: (row) =>
      `=AVERAGEIFS(${inLog("I")},${inLog("C")},A${row},${inLog("G")},"as found",${inLog("H")},B${row},${inLog("K")},"held")`,
  },
  { heading: "Heat, W", width: 9, format: "0.00", formula: "=BIMETAL.CONTACT.WATTS(B2:B9,L2:L9)" },
  { heading: "Limit, W", width: 9, format: "0.0", formula: "=BIMETAL.CONTACT.LIMIT(B2:B7)" },
  { heading: "Limit, V", width: 9, format: "0.000_)", answers: true },
  { heading: "What the bench does next", width: 44, typed: ({ next }) => next },
];

const breakerList = { columns: breakerColumns, entries: breakers };
const afterBreakers = breakers.length + 2;
const breakerSheet: Sheet = {
  name: "Breakers",
  cells: [
    ...listCells(breakerList),
    ...one(
      afterBreakers,
      0,
      "The limits are those of IEC 60898-1, for B, C and D at the rating, warm and settled. UL 489 sets none: compare the poles of one breaker.",
      note,
    ),
    ...one(
      afterBreakers + 1,
      0,
      "Out counts what lies outside the computed band too: the reason beside the verdict tells. The warm drop is that of the hold as found.",
      note,
    ),
    ...one(
      afterBreakers + 2,
      0,
      "A count of trials is no release to service; nothing here says that a breaker may be used.",
      note,
    ),
  ],
  ...listLooks(breakerList),
  frozen: { rows: 1, columns: 1 },
};

const readMe = page("Read me", [
  "The test log of the Fernhollow Tool Library",
  "Fernhollow is invented, and so are its boards, its breakers and every number typed in this workbook. The sheet Log holds four evenings at its bench: seventy-one trials of eight small breakers, one line a trial. Green headings are typed, sand-coloured headings are answered by formulas.",
  "Drop is the voltage across one pole, read before the trip or at the end of a hold. Carried before is a current that flowed for an hour just before the trial; empty means cold. Rest is the time since the breaker last carried a current, and air is that around it: without these a repeat looks cold when it is not, and a good breaker is called early. Heat is that of one pole as measured, heat at rating the same scaled to the rating, and share of limit compares it with IEC 60898-1; UL 489 sets no limit.",
  "The formulas stand in the first line of the log, in columns Q, S, U and V; each answers all lines down to 121. Type a new trial into the next empty line and it is judged at once. Click any answer and let the pane explain it.",
  "A sound breaker is one that meets the printed tests of its standard. Its shortest and longest time are what any such breaker may take, given the air at the bench and what it carried before. An answer of early or late crossed a limit the standard prints; outside the computed band crossed a line worked out between the printed points.",
  "Some lines are typed amiss, as happens: a clock time for seconds, a comma for a point, a letter misread, a missing outcome, a missing time, a nought too many, degrees of the other kind. Their cells say #VALUE! or #N/A, and the pane says why; the lines around them stand. Only the clock time is taken at its word: it is called early, and the reason asks.",
  "Three of the breakers are bad. Find them before you look at the sheet Breakers.",
  "Carry nothing over from here to a real board. A result on the bench is not a release to service; after a short circuit near its breaking capacity no bench test proves a breaker fit for use.",
  "A test source has a low voltage and still burns: loose joints, thin leads and the breaker itself become hot enough to hurt. Bolt the leads, keep hands off while the current flows, let things cool, and never test a breaker that is connected to the mains.",
  "Where a line is marked as from memory in the pane, compare it with the page of the standard before you reject anything by it.",
]);

/** A question, a place for a formula, and below the question the formula to type. */
const ask = (row: number, question: string, formula: string): SheetCell[] => [
  ...one(row, 0, question),
  { row, column: 1, value: null, style: yours },
  { row, column: 2, value: null, style: yours },
  ...one(row + 1, 0, `   ${formula}`, note),
];

const tryIt: Sheet = {
  name: "Try it",
  cells: [
    ...one(0, 0, "Your first formula", title),
    ...one(2, 0, "Current, A"),
    ...one(2, 1, 51),
    ...one(3, 0, "Rating, A"),
    ...one(3, 1, 20),
    ...one(4, 0, "Characteristic"),
    ...one(4, 1, "C"),
    ...ask(6, "Type into the yellow cell beside this:", "=BIMETAL.TRIP.RANGE(B3,B4,B5)"),
    ...one(
      9,
      0,
      "It answers in two cells, 1 and 60: at 51 A a sound 20 A breaker of characteristic C trips neither before 1 s nor after 60 s.",
    ),
    ...one(10, 0, "Then change the 51 to 24, to 20, to 200, and the C to UL 489; or type K and see what it says."),
    ...ask(12, "What would a trip after 75 s mean?", "=BIMETAL.TRIP.VERDICT(B3,75,B4,B5)"),
    ...ask(15, "How does an answer come about?", '=BIMETAL.EXPLAIN("TRIP.RANGE",B3,B4,B5)'),
  ],
  widths: new Map([
    [0, 42],
    [1, 14],
    [2, 14],
  ]),
  choices: [{ block: { row: 4, column: 1, rows: 1, columns: 1 }, words: characteristics }],
};

export const testLog: Book = { sheets: [log, breakerSheet, readMe, tryIt] };
