import type { Source } from "../metrology/source";

// NFPA 70 (National Electrical Code), article 430: motors.

const from = (place: string): Source => ({ document: "NFPA 70", edition: "2023", place, standing: "corroborated" });

const guard = "test/inrush/nfpa70.published.test.ts";

/** Table 430.7(B), locked-rotor indicating code letters, kVA per hp; the last has no upper end. I, O and Q are not used. */
export const codeLetters = {
  A: [0, 3.14],
  B: [3.15, 3.54],
  C: [3.55, 3.99],
  D: [4, 4.49],
  E: [4.5, 4.99],
  F: [5, 5.59],
  G: [5.6, 6.29],
  H: [6.3, 7.09],
  J: [7.1, 7.99],
  K: [8, 8.99],
  L: [9, 9.99],
  M: [10, 11.19],
  N: [11.2, 12.49],
  P: [12.5, 13.99],
  R: [14, 15.99],
  S: [16, 17.99],
  T: [18, 19.99],
  U: [20, 22.39],
  V: [22.4, Infinity],
} as const satisfies Record<string, readonly [number, number]>;

export type CodeLetter = keyof typeof codeLetters;

export const codeLetterSource: Source = {
  ...from("Table 430.7(B)"),
  tables: [
    {
      title: "Locked-rotor code letters",
      columns: [["letter"], ["from", "kVA/hp"], ["to", "kVA/hp"]],
      rows: Object.entries(codeLetters).map(([letter, [low, high]]) => [
        letter,
        low,
        Number.isFinite(high) ? high : null,
      ]),
      guard,
    },
  ],
};

/** Table 430.52(C)(1): largest rating of an inverse-time breaker for the motor's branch circuit, % of the table's full-load current. */
export const ceilingPercent = {
  "single-phase": 250,
  "squirrel cage": 250,
  "Design B premium": 250,
  synchronous: 250,
  "wound rotor": 150,
  "d.c.": 150,
} as const satisfies Record<string, number>;

export type MotorType = keyof typeof ceilingPercent;

/** Where the motor will not start on the next standard size: up to so many A of full-load current, no rating above this %. */
const exceptions = [
  { to: 100, percent: 400 },
  { to: Infinity, percent: 300 },
] as const;

/** % of the full-load current, A, that no rating exceeds even then. */
export const exceptionPercent = (fullLoad: number): number =>
  exceptions.find(({ to }) => fullLoad <= to)?.percent as number;

/** A synchronous motor of low torque and such a speed or less, r/min, started unloaded, needs no more than this %. */
export const slowSynchronous = { speed: 450, percent: 200 } as const;

export const ceilingSource: Source = {
  ...from("430.52(C)(1) and its table and exceptions"),
  tables: [
    {
      title: "Largest rating of an inverse-time breaker for a motor's circuit",
      columns: [["motor"], ["of the full-load current", "%"]],
      rows: Object.entries(ceilingPercent),
      guard,
    },
    {
      title: "The same where the motor will not start",
      columns: [
        ["full-load current up to", "A"],
        ["of the full-load current", "%"],
      ],
      rows: exceptions.map(({ to, percent }) => [Number.isFinite(to) ? to : null, percent]),
      guard,
    },
    {
      title: "Synchronous motors of low torque, started unloaded",
      columns: [
        ["speed up to", "r/min"],
        ["of the full-load current", "%"],
      ],
      rows: [[slowSynchronous.speed, slowSynchronous.percent]],
      standings: ["from memory"],
      guard,
    },
  ],
};
