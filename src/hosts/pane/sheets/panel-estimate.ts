import { type Column, type List, listCells, listLooks, typedIn, typedTable } from "./list";
import { note, one, title, yours } from "./looks";
import type { Look, ReadySheet } from "./ready-sheet";

/** One way of a board and what hangs on it. */
export interface Way {
  readonly serves: string;
  readonly rating: number;
  readonly characteristic: string;
  readonly poles: number;
  /** W of a pole at the rating, warm. */
  readonly loss: number;
  /** A; null is a way that is off. */
  readonly load: number | null;
}

/** What the board sits in: a name, a value and a remark for each of its six facts. */
export type Cabinet = readonly (readonly [what: string, value: string | number, remark: string])[];

/** The row of the ways' headings, counted from 0. */
const first = 8;
/** The first way's row as a sheet counts it. */
export const firstWay = first + 2;

const wayColumns = (bottom: number): readonly Column<Way>[] => {
  const down = (column: string): string => `${column}${firstWay}:${column}${bottom}`;
  return [
    { heading: "Way", width: 15, typed: (_, line) => line },
    { heading: "Serves", width: 21, typed: ({ serves }) => serves },
    { heading: "Rating, A", width: 10, typed: ({ rating }) => rating },
    {
      heading: "Characteristic",
      width: 15,
      typed: ({ characteristic }) => characteristic,
      words: ["B", "C", "D", "UL 489"],
    },
    { heading: "Poles", width: 7, typed: ({ poles }) => poles },
    { heading: "Rated loss, W", width: 14, format: "0.0", typed: ({ loss }) => loss },
    { heading: "Load, A", width: 9, typed: ({ load }) => load },
    {
      heading: "Loss, W",
      width: 9,
      format: "0.00",
      formula: `=BIMETAL.ENCLOSURE.PANEL(${down("C")},${down("F")},${down("G")},B2,B3,B4,B5,B7,${down("D")},,${down("E")},B6)`,
    },
    { heading: "Re-rated, A", width: 12, format: "0.0", answers: true },
    { heading: "Margin", width: 9, format: "0.00", answers: true },
    { heading: "Continuous", width: 12, format: "0.00", answers: true },
    { heading: "All heat, W", width: 12, format: "0.0", answers: true },
    { heading: "Inside, °C", width: 11, format: "0.0", answers: true },
    { heading: "Note", width: 46, answers: true },
  ];
};

/** The ways of a board as a list. `lines`: how many it has room for; `look`: that of what is typed. */
const wayList = (ways: readonly Way[], { lines = ways.length, look }: Room): List<Way> => ({
  columns: typedIn(look, wayColumns(firstWay - 1 + lines)),
  entries: ways,
  first,
  lines,
});

interface Room {
  readonly lines?: number;
  readonly look?: Look;
}

/** A board in its cabinet: one formula answers for all ways. */
export const boardSheet = (name: string, cabinet: Cabinet, ways: readonly Way[], room: Room = {}): ReadySheet => {
  const list = wayList(ways, room);
  return {
    name,
    cells: [
      ...one(0, 0, "The cabinet", title),
      ...cabinet.flatMap(([what, value, remark], i) => [
        ...one(i + 1, 0, what),
        ...one(i + 1, 1, value, room.look),
        ...(remark ? one(i + 1, 2, remark, note) : []),
      ]),
      ...listCells(list),
    ],
    ...listLooks(list),
  };
};

/** Invented values, to be typed over. */
const cabinet: Cabinet = [
  ["Height, m", 0.6, "outside; all that is yellow is an example: type over it"],
  ["Width, m", 0.4, ""],
  ["Depth, m", 0.15, ""],
  ["Mounting", "wall", "free, wall, end of row, middle of row …"],
  ["Other heat, W", 5, "wiring, supplies, contactors"],
  ["Room, °C", 35, "the warmest that is to be expected"],
];
const ways: readonly Way[] = [
  { serves: "sockets", rating: 20, characteristic: "C", poles: 1, loss: 3.1, load: 14 },
  { serves: "lights", rating: 10, characteristic: "B", poles: 1, loss: 1.9, load: 4 },
  { serves: "heater", rating: 16, characteristic: "B", poles: 1, loss: 2.5, load: 13 },
];

const roomy = { lines: 48, look: yours };
const board = boardSheet("Panel estimate", cabinet, ways, roomy);
const mind = "A margin above 1 is no permission: rating, conductor, the 80 % rule and the makers' own tables decide.";

/** A small board, with room for more ways. */
export const panelEstimate: ReadySheet = {
  ...board,
  cells: [...board.cells, ...one(first - 1, 0, mind, note)],
  tables: [typedTable("Ways", wayList(ways, roomy))],
};
