import { type Body, secondsToTrip } from "../thermal/body";

/** A motor started again and again, A and s: each start is followed by running (0: off) until the next one, `period` after the last. */
export interface StartingDuty {
  readonly startCurrent: number;
  readonly startTime: number;
  readonly runningCurrent: number;
  readonly period: number;
}

/** What repeated starts from cold do to a strip. States are parts of the heat that trips it: 1 is the trip. */
export interface RepeatedStarts {
  /** State at the end of the n-th start (from 1), as long as it has not tripped. */
  readonly stateAfter: (start: number) => number;
  /** State that many seconds after the first start began, as long as it has not tripped. */
  readonly stateAt: (seconds: number) => number;
  /** The state that the ends of the starts approach; above 1 it trips on the way. */
  readonly settles: number;
  /** The start in which it trips, and how far into it, s; undefined if it never does. */
  readonly trip?: { readonly start: number; readonly seconds: number };
  /** The start after which the state is within 0.001 of where it settles. */
  readonly settledStart: number;
}

/** The running current must lie below the pickup: only a start can then trip the strip. Exact, start by start. */
export const repeatedStarts = (body: Body, duty: StartingDuty): RepeatedStarts => {
  const { first, settles } = cycle(body, duty);
  const decay = -duty.period / body.timeConstant;
  const { started, running } = parts(body, duty);
  const stateAfter = (start: number): number => settles + (first - settles) * Math.exp((start - 1) * decay);
  const towards = (goal: number, state: number, seconds: number): number =>
    goal + (state - goal) * Math.exp(-seconds / body.timeConstant);
  const stateBefore = (start: number): number =>
    start === 1 ? 0 : towards(running, stateAfter(start - 1), duty.period - duty.startTime);
  const stateAt = (seconds: number): number => {
    const start = 1 + Math.floor(seconds / duty.period);
    const within = seconds - (start - 1) * duty.period;
    return within <= duty.startTime
      ? towards(started, stateBefore(start), within)
      : towards(running, stateAfter(start), within - duty.startTime);
  };
  /** The first start that ends less than `short` short of where the state settles. */
  const startWithin = (short: number): number =>
    settles - first <= short ? 1 : 1 + Math.max(1, Math.ceil(Math.log(short / (settles - first)) / decay));
  const told = { stateAfter, stateAt, settles, settledStart: startWithin(0.001) };
  if (settles <= 1) return told;
  const start = startWithin(settles - 1);
  const seconds = secondsToTrip(body, duty.startCurrent, { preload: body.pickup * Math.sqrt(stateBefore(start)) });
  return { ...told, trip: { start, seconds } };
};

/**
 * The most starts per hour that the strip stands for ever, its motor running in between: the period at which the state settles at 1.
 * Infinity: it carries the start current for ever; 0: a single start after long running trips it.
 */
export const mostStartsPerHour = (body: Body, duty: Omit<StartingDuty, "period">): number => {
  const { started, running, fades } = parts(body, duty);
  if (started <= 1) return Infinity;
  // settles = 1 solved for e^(−rest/τ).
  const room = 1 - started * (1 - fades) - fades * running;
  if (room <= 0) return 0;
  const rest = body.timeConstant * Math.log((fades * (1 - running)) / room);
  return 3600 / (duty.startTime + rest);
};

/** Where the start and the running current would take the state, and what a start leaves of the state before it. */
const parts = ({ pickup, timeConstant }: Body, duty: Omit<StartingDuty, "period">) => ({
  started: (duty.startCurrent / pickup) ** 2,
  running: (duty.runningCurrent / pickup) ** 2,
  fades: Math.exp(-duty.startTime / timeConstant),
});

/** State after the first start from cold, and the one that a period brings back to itself. */
const cycle = (body: Body, duty: StartingDuty): { first: number; settles: number } => {
  const { started, running, fades } = parts(body, duty);
  const gain = -Math.expm1(-duty.startTime / body.timeConstant);
  const rest = -Math.expm1(-(duty.period - duty.startTime) / body.timeConstant);
  const lost = -Math.expm1(-duty.period / body.timeConstant);
  return { first: started * gain, settles: (started * gain + fades * running * rest) / lost };
};
