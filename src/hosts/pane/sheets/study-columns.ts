import type { Column } from "./list";
import { seconds } from "./looks";

// The columns of a study of one breaker. References and literals are handed in as a formula writes them.

export interface StudiedTrial {
  readonly current: number;
  readonly time: number;
  readonly outcome: string;
  /** A for long before; null is from cold. */
  readonly carried: number | null;
}

export const trialColumns: readonly Column<StudiedTrial>[] = [
  { heading: "Trial", width: 7, typed: (_, line) => line },
  { heading: "Current, A", width: 12, typed: ({ current }) => current },
  { heading: "Time, s", width: 10, typed: ({ time }) => time },
  { heading: "Outcome", width: 10, typed: ({ outcome }) => outcome, words: ["tripped", "held"] },
  { heading: "Carried before, A", width: 19, typed: ({ carried }) => carried },
];

/** By line of the fit: three estimates and the corrected scatter, three counts, the log-likelihood and a yes or no, the covariance, the profile. */
const estimates = (line: number): string | undefined => {
  if (line >= 4 && line < 7) return undefined;
  return line >= 9 && line < 12 ? "0.000E+00" : "0.0000";
};

export const fitColumns = (formula: string): readonly Column<StudiedTrial>[] => [
  { heading: "What the trials say", width: 32, formula },
  { heading: "Value", width: 13, format: estimates, answers: true },
  { heading: "Standard error", width: 16, format: estimates, answers: true },
  { heading: "Low", width: 15, format: estimates, answers: true },
  { heading: "High", width: 11, format: estimates, answers: true },
  { heading: "Note", width: 50, format: estimates, answers: true },
];

interface Breaker {
  readonly rating: string;
  readonly characteristic: string;
  readonly air: string;
}

/** When it trips next at each current, beside what any sound breaker of its kind may do. */
export const nextColumns = (
  currents: string,
  fit: string,
  { rating, characteristic, air }: Breaker,
): readonly Column<number>[] => [
  { heading: "Next trial at, A", width: 16, typed: (current) => current },
  { heading: "Low, s", width: 14, format: seconds, formula: `=BIMETAL.THERMAL.FORECAST(${currents},${fit})` },
  { heading: "Median, s", width: 13, format: seconds, answers: true },
  { heading: "High, s", width: 12, format: seconds, answers: true },
  {
    heading: "Any sound one, s",
    width: 17,
    format: seconds,
    formula: `=BIMETAL.TRIP.RANGE(${currents},${rating},${characteristic},,${air})`,
  },
  { heading: "to, s", width: 12, format: seconds, answers: true },
];

/** Nothing above the pickup's lower limit is certain, so nothing is rounded up to 1. */
const likely = '[=1]0;[>0.9999]"> 0.9999";0.0000';

/** How likely it is to hold a current for a time. */
export const holdColumns = ({
  currents,
  times,
  fit,
}: Record<"currents" | "times" | "fit", string>): readonly Column<readonly [number, number, string]>[] => [
  { heading: "Does it hold, A", width: 16, typed: ([current]) => current },
  { heading: "for, s", width: 12, typed: ([, time]) => time },
  {
    heading: "Probability",
    width: 13,
    format: likely,
    formula: `=BIMETAL.THERMAL.HOLDS(${currents},${times},${fit})`,
  },
  { heading: "What it is", width: 12, typed: ([, , what]) => what },
];

/** Whether it rides through a motor's start. */
export const startColumns = ({
  currents,
  times,
  running,
  fit,
  rating,
}: Record<"currents" | "times" | "running" | "fit" | "rating", string>): readonly Column<
  readonly [string, number, number, number]
>[] => [
  { heading: "Rides through", width: 16, typed: ([machine]) => machine },
  { heading: "Starts with, A", width: 14, typed: ([, current]) => current },
  { heading: "lasts, s", width: 13, typed: ([, , time]) => time },
  { heading: "runs with, A", width: 12, typed: ([, , , running]) => running },
  {
    heading: "Running",
    width: 15,
    format: "0.00",
    formula: `=BIMETAL.INRUSH.MARGIN(${currents},${times},${running},${rating},${fit})`,
  },
  { heading: "Thermal", width: 12, format: "0.00", answers: true },
  { heading: "Magnetic", width: 12, answers: true },
  { heading: "Peak", width: 12, answers: true },
  { heading: "Verdict", width: 44, answers: true },
];
