import type { LoggedTrial } from "../../src/hosts/pane/sheets/test-log";
import { chances, drop, type Strip, shoot } from "./strips";

// The bench of the Fernhollow Tool Library on four evenings of one June. Place, boards, breakers and numbers are invented.

export interface Breaker {
  readonly tag: string;
  readonly rating: number;
  readonly characteristic: string;
  readonly poles: number;
  readonly serves: string;
  readonly leads: string;
  /** mΩ of a pole, found and after it was switched a dozen times. */
  readonly milliohms: { readonly found: number; readonly exercised: number };
  readonly strip: Strip;
  readonly next: string;
}

const letters = { calibration: 30, scatter: 0.04 };
const ul = { calibration: 25, scatter: 0.05 };

export const breakers: readonly Breaker[] = [
  {
    tag: "FT-01",
    rating: 16,
    characteristic: "B",
    poles: 1,
    serves: "lights, main hall",
    leads: "2.5 mm²",
    milliohms: { found: 9.8, exercised: 9.1 },
    strip: { ...letters, pickup: 1.27, timeConstant: 45, magnet: 64 },
    next: "test again in a year",
  },
  {
    tag: "FT-02",
    rating: 20,
    characteristic: "C",
    poles: 1,
    serves: "sockets, wood room",
    leads: "2.5 mm²",
    milliohms: { found: 8.3, exercised: 7.8 },
    strip: { ...letters, pickup: 1.25, timeConstant: 60, magnet: 150 },
    next: "kept as the bench's own reference",
  },
  {
    tag: "FT-03",
    rating: 20,
    characteristic: "C",
    poles: 1,
    serves: "sockets, metal room",
    leads: "2.5 mm²",
    milliohms: { found: 16.2, exercised: 14.6 },
    strip: { ...letters, pickup: 1.24, timeConstant: 55, magnet: 155 },
    next: "runs hot: taken out, terminals to be looked at",
  },
  {
    tag: "FT-04",
    rating: 32,
    characteristic: "D",
    poles: 3,
    serves: "compressor",
    leads: "6 mm²",
    milliohms: { found: 3.9, exercised: 3.6 },
    strip: { ...letters, pickup: 1.3, timeConstant: 80, magnet: 480 },
    next: "magnetic test is out of the source's reach",
  },
  {
    tag: "FT-05",
    rating: 10,
    characteristic: "C",
    poles: 1,
    serves: "soldering bench",
    leads: "1.5 mm²",
    milliohms: { found: 22, exercised: 20.5 },
    strip: { ...letters, pickup: 1.1, timeConstant: 20, magnet: 75 },
    next: "trips early: taken out",
  },
  {
    tag: "FT-06",
    rating: 25,
    characteristic: "B",
    poles: 1,
    serves: "kiln corner",
    leads: "4 mm²",
    milliohms: { found: 5.6, exercised: 5.2 },
    strip: { ...letters, pickup: 1.4, timeConstant: 255, magnet: 100 },
    next: "trips late: taken out",
  },
  {
    tag: "FT-07",
    rating: 20,
    characteristic: "UL 489",
    poles: 1,
    serves: "120 V demonstration board",
    leads: "12 AWG",
    milliohms: { found: 8.8, exercised: 8.2 },
    strip: { ...ul, pickup: 1.15, timeConstant: 110, magnet: 280 },
    next: "test again in a year",
  },
  {
    tag: "FT-08",
    rating: 30,
    characteristic: "UL 489 typical",
    poles: 2,
    serves: "240 V demonstration board",
    leads: "10 AWG",
    milliohms: { found: 5.2, exercised: 4.9 },
    strip: { ...ul, pickup: 1.18, timeConstant: 120, magnet: 420 },
    next: "test again in a year",
  },
];

interface Planned {
  readonly tag: string;
  /** A */
  readonly at: number;
  /** s after which the tester switches off; left out: until it trips. */
  readonly watch?: number;
  /** A, carried for an hour before. */
  readonly carried?: number;
  /** min since the last current; left out: this is the evening's first. */
  readonly rest?: number;
  readonly remarks?: string;
  /** What the tester typed amiss. */
  readonly slip?: (trial: LoggedTrial) => Partial<LoggedTrial>;
}

const hour = 3600;
/** 0:00:14, which a spreadsheet keeps as a part of a day. */
const clockTime = (seconds: number): number => Math.round(seconds) / 86400;

const evenings: readonly {
  /** Day, as spreadsheets count them: 46182 is 2026-06-09. */
  readonly day: number;
  readonly air: number;
  readonly state: LoggedTrial["state"];
  readonly trials: readonly Planned[];
}[] = [
  {
    day: 46182,
    air: 23,
    state: "as found",
    trials: [
      { tag: "FT-01", at: 16, watch: hour, remarks: "drop read at the end" },
      { tag: "FT-02", at: 20, watch: hour, remarks: "drop read at the end" },
      { tag: "FT-03", at: 20, watch: hour, remarks: "warm to the hand" },
      { tag: "FT-04", at: 32, watch: hour, remarks: "three poles in series" },
      { tag: "FT-05", at: 10, watch: hour },
      { tag: "FT-06", at: 25, watch: hour },
      { tag: "FT-07", at: 20, watch: hour },
      { tag: "FT-08", at: 30, watch: hour, remarks: "two poles in series" },
      {
        tag: "FT-01",
        at: 40.8,
        rest: 45,
        remarks: "time typed as a clock time",
        slip: ({ time }) => ({ time: clockTime(Number(time)) }),
      },
      { tag: "FT-02", at: 51, rest: 45 },
      { tag: "FT-03", at: 51, rest: 45 },
      { tag: "FT-04", at: 81.6, rest: 50 },
      { tag: "FT-05", at: 25.5, rest: 45 },
      { tag: "FT-06", at: 63.8, rest: 50, remarks: "slow: do it again, warm room" },
      { tag: "FT-07", at: 40, rest: 60 },
      { tag: "FT-08", at: 60, rest: 60 },
    ],
  },
  {
    day: 46189,
    air: 26,
    state: "exercised",
    trials: [
      { tag: "FT-01", at: 32 },
      { tag: "FT-02", at: 40 },
      { tag: "FT-03", at: 40 },
      { tag: "FT-04", at: 64, remarks: "three poles in series" },
      { tag: "FT-05", at: 20 },
      { tag: "FT-06", at: 50 },
      {
        tag: "FT-02",
        at: 60,
        rest: 25,
        remarks: "comma typed for the point",
        slip: ({ current }) => ({ current: `${current},0` }),
      },
      { tag: "FT-02", at: 60, rest: 25 },
      { tag: "FT-02", at: 80, rest: 25 },
      { tag: "FT-03", at: 60, rest: 25 },
      { tag: "FT-01", at: 24, rest: 30, slip: () => ({ outcome: null }), remarks: "outcome forgotten" },
      { tag: "FT-04", at: 42, rest: 35, watch: 900, remarks: "switched off after a quarter of an hour" },
      { tag: "FT-05", at: 15, rest: 30 },
      { tag: "FT-06", at: 37.5, rest: 30 },
      { tag: "FT-02", at: 30, rest: 30 },
      { tag: "FT-03", at: 30, rest: 30 },
      { tag: "FT-01", at: 40.8, rest: 30, slip: () => ({ characteristic: "K" }), remarks: "letter misread" },
    ],
  },
  {
    day: 46196,
    air: 30,
    state: "exercised",
    trials: [
      { tag: "FT-01", at: 18, watch: hour, remarks: "warmed cupboard, from here on" },
      { tag: "FT-01", at: 23.2, carried: 18, rest: 0 },
      { tag: "FT-02", at: 22.6, watch: hour },
      { tag: "FT-02", at: 29, carried: 22.6, rest: 0 },
      { tag: "FT-03", at: 22.6, watch: 1800, remarks: "half an hour had to do" },
      { tag: "FT-03", at: 40, rest: 30, remarks: "less rest would be a warm start" },
      { tag: "FT-04", at: 36, watch: hour, remarks: "three poles in series" },
      { tag: "FT-04", at: 46.4, carried: 36, rest: 0 },
      { tag: "FT-05", at: 11.3, watch: hour, remarks: "let go within two minutes" },
      { tag: "FT-05", at: 11.3, watch: hour, rest: 40, remarks: "again, the same" },
      { tag: "FT-06", at: 28.25, watch: hour },
      { tag: "FT-06", at: 36.25, carried: 28.25, rest: 0 },
      { tag: "FT-01", at: 40.8, rest: 30 },
      { tag: "FT-02", at: 51, rest: 30 },
      {
        tag: "FT-03",
        at: 51,
        rest: 30,
        remarks: "rating typed with a 0 too many",
        slip: ({ rating }) => ({ rating: 10 * Number(rating) }),
      },
      { tag: "FT-03", at: 51, rest: 30 },
      { tag: "FT-04", at: 81.6, rest: 35 },
      { tag: "FT-05", at: 25.5, rest: 30 },
      { tag: "FT-06", at: 63.75, rest: 45, remarks: "over a minute" },
      { tag: "FT-06", at: 63.75, rest: 45, remarks: "and again" },
    ],
  },
  {
    day: 46203,
    air: 25,
    state: "exercised",
    trials: [
      { tag: "FT-07", at: 20, watch: hour },
      { tag: "FT-08", at: 30, watch: hour, remarks: "two poles in series" },
      { tag: "FT-07", at: 60, rest: 45 },
      { tag: "FT-08", at: 90, rest: 45 },
      { tag: "FT-07", at: 40, rest: 40 },
      { tag: "FT-08", at: 60, rest: 40 },
      { tag: "FT-07", at: 27, rest: 40 },
      { tag: "FT-08", at: 40.5, rest: 40 },
      { tag: "FT-07", at: 40, carried: 16, rest: 0, remarks: "hot start" },
      { tag: "FT-08", at: 60, rest: 45, slip: () => ({ air: 77 }), remarks: "room in the wrong degrees" },
      { tag: "FT-08", at: 90, rest: 40, watch: 3, remarks: "switched off by hand" },
      { tag: "FT-01", at: 48, watch: 0.2, remarks: "magnet must not pull" },
      { tag: "FT-01", at: 80, rest: 20, remarks: "magnet must pull" },
      { tag: "FT-02", at: 100, watch: 0.2 },
      { tag: "FT-02", at: 200, rest: 20 },
      { tag: "FT-03", at: 200 },
      { tag: "FT-05", at: 100 },
      { tag: "FT-06", at: 125, slip: () => ({ time: null }), remarks: "watch not started" },
    ],
  },
];

/** Shorter than this nobody reads a voltmeter. */
const readable = 2;

const lineOf = (plan: Planned, evening: (typeof evenings)[number], chance: () => number): LoggedTrial => {
  const breaker = breakers.find(({ tag }) => tag === plan.tag) as Breaker;
  const { tag, rating, characteristic, poles, leads, milliohms, strip } = breaker;
  const { at: current, carried = 0, watch: watched = 7200, rest = null, remarks = null } = plan;
  const { time, outcome } = shoot(strip, { rating, current, carried, air: evening.air, watched }, chance);
  const pole = evening.state === "as found" ? milliohms.found : milliohms.exercised;
  const volts = drop(pole, current, chance);
  const trial: LoggedTrial = {
    day: evening.day,
    ...{ breaker: tag, rating, characteristic, poles, state: evening.state, current },
    drop: time < readable ? null : volts,
    ...{ time, outcome, carried: carried || null, rest, air: evening.air, leads, remarks },
  };
  return { ...trial, ...plan.slip?.(trial) };
};

const chance = chances(20260609);

export const trials: readonly LoggedTrial[] = evenings.flatMap((evening) =>
  evening.trials.map((plan) => lineOf(plan, evening, chance)),
);
