import type { Fitted } from "../thermal/fitted";
import { forecast, holdProbability } from "../thermal/forecast";
import type { Margin, MarginVerdict, Start } from "./margin";

/** The margins of one breaker that its own trials have told. A fit knows the strip only, so the magnetic ones stay unknown. */
export interface FittedMargin extends Margin {
  /** That the strip carries the start to its end. */
  readonly probability: number | "not known";
}

/**
 * Whether a fitted breaker rides through a start. Running: the pickup's lower 95 % limit ÷ running current; thermal: the lower 95 %
 * prediction limit of the trip time ÷ start time. An open limit promises nothing.
 */
export const fittedMargin = (fitted: Fitted, start: Start, preload: number): FittedMargin => {
  const shot = { current: start.current, preload };
  const { low, high } = forecast(fitted, shot);
  const { pickup } = fitted;
  const running = typeof pickup.low === "number" ? pickup.low / start.running : undefined;
  const thermal = low === "holds" ? Infinity : low === "not known" ? 0 : low / start.seconds;
  const trips =
    (typeof high === "number" && start.seconds > high) ||
    (typeof pickup.high === "number" && start.running >= pickup.high);
  const verdict: MarginVerdict = trips
    ? "trips"
    : running === undefined || running < 1 || thermal < 1
      ? "may trip"
      : "thermal rides through, magnetic not known";
  const probability = holdProbability(fitted, shot, start.seconds);
  return { running, thermal, magnetic: undefined, peak: undefined, verdict, probability };
};
