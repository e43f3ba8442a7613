import type { Book, Sheet } from "../../src/hosts/engine/book";
import { type Column, listCells, listLooks } from "../../src/hosts/pane/sheets/list";
import { one, title } from "../../src/hosts/pane/sheets/looks";
import { boardSheet, type Cabinet, firstWay, type Way } from "../../src/hosts/pane/sheets/panel-estimate";
import { page } from "./page";

const way = (
  serves: string,
  rating: number,
  characteristic: string,
  loss: number,
  load: number | null,
  poles = 1,
): Way => ({
  ...{ serves, rating, characteristic, loss, load, poles },
});

/** The invented board of the Fernhollow Tool Library. */
const ways: readonly Way[] = [
  way("lights, main hall", 16, "B", 2.3, 9),
  way("lights, wood room", 16, "B", 2.4, 7.5),
  way("lights, yard", 10, "B", 1.9, 2),
  way("sockets, wood room", 20, "C", 3.1, 11),
  way("sockets, metal room", 20, "C", 3.2, 14),
  way("sockets, hall north", 20, "C", 3.1, 6),
  way("sockets, hall south", 20, "C", 3, 8),
  way("sockets, office", 16, "B", 2.4, 5),
  way("soldering bench", 10, "C", 2, 6.5),
  way("kettle and fridge", 16, "B", 2.5, 10),
  way("water heater", 16, "B", 2.5, 13),
  way("kiln", 32, "C", 4.4, 28.5, 3),
  way("compressor", 32, "D", 3.7, 17, 3),
  way("dust extractor", 25, "D", 3.5, 12, 3),
  way("table saw", 25, "D", 3.5, 9.6, 3),
  way("planer", 25, "D", 3.6, 11, 3),
  way("drill press", 16, "C", 2.4, 4),
  way("band saw", 16, "C", 2.4, 6),
  way("lathe", 20, "D", 3, 8, 3),
  way("grinder", 16, "C", 2.3, null),
  way("welder socket", 32, "C", 4.5, null),
  way("heat pump", 20, "C", 3.1, 15.5),
  way("door and alarm", 6, "B", 1.6, 0.5),
  way("spare", 16, "B", 2.4, null),
];

const bottom = firstWay - 1 + ways.length;
const fixed = (column: string): string => `Board!$${column}$${firstWay}:$${column}$${bottom}`;

const cabinet: Cabinet = [
  ["Height, m", 1.1, "outside"],
  ["Width, m", 0.6, ""],
  ["Depth, m", 0.18, ""],
  ["Mounting", "wall", "its back to the wall, alone"],
  ["Other heat, W", 14, "wiring, a supply, two contactors"],
  ["Room, °C", 41, "the hottest afternoon"],
];

const board: Sheet = boardSheet("Board", cabinet, ways);

interface Day {
  readonly day: number;
  /** °C in the room in the afternoon. */
  readonly room: number;
  /** Every load as a part of that of a busy afternoon. */
  readonly part: number;
}

/** 46216 is 2026-07-13, a Monday. */
const week: readonly Day[] = [
  { day: 46216, room: 33, part: 0.8 },
  { day: 46217, room: 35, part: 0.9 },
  { day: 46218, room: 37.5, part: 1 },
  { day: 46219, room: 39, part: 1 },
  { day: 46220, room: 41, part: 1 },
  { day: 46221, room: 38, part: 0.6 },
  { day: 46222, room: 34, part: 0.15 },
];

const kiln = firstWay + ways.findIndex(({ serves }) => serves === "kiln");
const size = "Board!$B$2,Board!$B$3,Board!$B$4,Board!$B$5";

const weekColumns: readonly Column<Day>[] = [
  { heading: "Afternoon", width: 15, format: "yyyy-mm-dd", typed: ({ day }) => day },
  { heading: "Room, °C", width: 10, format: "0.0", typed: ({ room }) => room },
  { heading: "Part of load", width: 13, format: "0%", typed: ({ part }) => part },
  {
    heading: "All heat, W",
    width: 12,
    format: "0.0",
    each: (row) =>
      `=BIMETAL.ENCLOSURE.TOTAL(${fixed("F")},${fixed("C")},C${row}*${fixed("G")},${fixed("E")},Board!$B$6)`,
  },
  { heading: "Largest way, W", width: 17, format: "0.0", answers: true },
  {
    heading: "Rise, K",
    width: 13,
    format: "0.0",
    each: (row) => `=BIMETAL.ENCLOSURE.RISE(D${row},${size},"balance",,B${row})`,
  },
  { heading: "At the top, K", width: 14, format: "0.0", answers: true },
  { heading: "Inside, °C", width: 11, format: "0.0", each: (row) => `=B${row}+F${row}` },
  { heading: "Kiln's load, A", width: 15, format: "0.0", each: (row) => `=C${row}*Board!$G$${kiln}` },
  {
    heading: "Re-rated, A",
    width: 12,
    format: "0.0",
    each: (row) => `=BIMETAL.TRIP.RERATED(Board!$C$${kiln},H${row})`,
  },
  { heading: "Margin", width: 9, format: "0.00", each: (row) => `=J${row}/I${row}` },
  {
    heading: "What its breaker does",
    width: 22,
    each: (row) => `=BIMETAL.TRIP.REGION(I${row},Board!$C$${kiln},Board!$D$${kiln},,H${row})`,
  },
];

const weekList = { columns: weekColumns, entries: week };
const otherMethods = week.length + 2;
const busiest = 2 + week.findIndex(({ room }) => room === Math.max(...week.map((day) => day.room)));
const weekSheet: Sheet = {
  name: "Week",
  cells: [
    ...listCells(weekList),
    ...one(otherMethods, 0, "The hottest afternoon by three methods", title),
    ...listCells({
      columns: [
        { heading: "Method", width: 15, typed: (method) => method },
        {
          heading: "Middle, K",
          width: 8,
          format: "0.0",
          each: (row) => `=BIMETAL.ENCLOSURE.RISE($D$${busiest},${size},A${row},,$B$${busiest})`,
        },
        { heading: "Top, K", width: 10, format: "0.0", answers: true },
      ] satisfies Column<string>[],
      entries: ["balance", "IEC TR 60890", "flat"],
      first: otherMethods + 1,
    }),
  ],
  ...listLooks(weekList),
  frozen: { rows: 1, columns: 1 },
};

const readMe = page("Read me", [
  "A board of twenty-four ways in a wall cabinet, through a hot week",
  "Fernhollow is invented, and so are its board, its loads and its weather. Green headings are typed, sand-coloured headings are answered by formulas.",
  "The sheet Board holds the cabinet, the ways and what each carries on a busy afternoon. One formula answers all of it: the heat, the air inside, what that air leaves of each rating, and which way runs short first.",
  "The sheet Week takes seven afternoons one after the other: the heat, the rise, the kiln's breaker in that air. Below it the hottest afternoon stands once more by three methods, and they do not agree: that is how well such an estimate is known.",
  "Losses are those of warm, settled poles. Loads are measured ones, so no diversity factor is put on them.",
  "A margin above 1 is no permission. Rating, conductor, the 80 % rule for loads of three hours and longer, and the makers' own tables decide; neighbours warm each other, which is not in these numbers.",
  "Looking into a live board is work for those who are allowed to do it. Measure with the covers on wherever you can.",
]);

export const panelEstimate: Book = { sheets: [board, weekSheet, readMe] };
