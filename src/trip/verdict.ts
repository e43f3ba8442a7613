import { say } from "../metrology/say";
import { citation } from "../metrology/source";
import type { Asked } from "./asked";
import { sameMultiple } from "./conditions";
import { type Limit, mustHoldFor, mustTripWithin } from "./printed-limits";
import type { TripRange } from "./range";

export interface Trial {
  /** A */
  readonly current: number;
  /** s until the trip, or for which it held */
  readonly time: number;
  readonly outcome: "tripped" | "held";
  /** Limits of error of the two meters, A and s; 0: taken as exact. */
  readonly currentError: number;
  readonly timeError: number;
}

interface Verdict {
  /** "in range", "early", "late", "outside the computed band", "did not trip in time", "undecided until 3600 s", "too close to call" */
  readonly verdict: string;
  /** Which line was crossed, or not, and whose line it is. */
  readonly why: string;
}

/** A current, A, and a time, s, as the meters may really have stood. */
type Reading = Pick<Trial, "current" | "time">;

/** `holding`: the hold test is not over; `undecided`: a sound breaker may still trip. */
type Place = "below" | "in" | "above" | "holding" | "undecided";

/**
 * Judges one trial against what a sound breaker may do. With limits of error it is a guarded decision (JCGM 106): a verdict stands
 * only if every current and time the meters allow would give it; the range falls with the current, so two corners decide.
 */
export const verdict = (asked: Asked, trial: Trial): Verdict => {
  const { current, time, currentError, timeError, outcome } = trial;
  // The gentlest and the harshest reading of the two meters; without errors they are one.
  const gentle = { current: current - currentError, time: time - timeError };
  const harsh = { current: current + currentError, time: time + timeError };
  const place = placeOf(asked, outcome, gentle);
  const exact = currentError === 0 && timeError === 0;
  if (!exact && place !== placeOf(asked, outcome, harsh))
    return { verdict: "too close to call", why: tooClose(asked, trial) };
  // A crossing counts as a printed limit's only where even the farther corner crosses one.
  if (place === "below") return low(asked, trial, harsh);
  if (place === "above") return high(asked, trial, gentle);
  const range = asked.rangeAt(current);
  if (place === "holding" || place === "undecided") {
    const [until, why] =
      place === "holding"
        ? [asked.bench?.ratedClass.holdSeconds ?? 0, "the hold test lasts"]
        : [range.longest.seconds, "a sound breaker may take"];
    return {
      verdict: `undecided until ${say(until, "s")}`,
      why: `held for ${say(time, "s")}; ${why} ${say(until, "s")}`,
    };
  }
  return { verdict: "in range", why: inside(asked, trial) };
};

const placeOf = (asked: Asked, outcome: Trial["outcome"], { current, time }: Reading): Place => {
  const { shortest, longest } = asked.rangeAt(current);
  if (outcome === "tripped") return time < shortest.seconds ? "below" : time > longest.seconds ? "above" : "in";
  if (Number.isFinite(longest.seconds)) return time > longest.seconds ? "above" : "undecided";
  const { bench } = asked;
  const inHoldTest =
    bench?.ratedClass.holdSeconds !== undefined && (current <= bench.holdEdge || sameMultiple(current, bench.holdEdge));
  return inHoldTest && time < (bench.ratedClass.holdSeconds ?? 0) ? "holding" : "in";
};

const low = (asked: Asked, trial: Trial, { current, time }: Reading): Verdict => {
  const limit = mustHoldFor(asked, current);
  const doubt =
    trial.time < 0.1 && !(asked.bench?.magnetic && trial.current > asked.bench.magnetic.lower)
      ? "; is this a clock time? Multiply it by 86400 to have seconds"
      : asked.rating !== 1 && trial.current < asked.rating / 2
        ? `; only ${say(trial.current / asked.rating, "", 3)} × the rating: was a multiple typed, or were columns swapped?`
        : "";
  if (limit && time < limit.seconds)
    return {
      verdict: "early",
      why: `beyond a printed limit: tripped after ${say(trial.time, "s")}; ${cited(limit)}${doubt}`,
    };
  if (!asked.bench)
    return {
      verdict: "early",
      why: `beyond the own band: tripped after ${say(trial.time, "s")}, not before ${say(asked.rangeAt(trial.current).shortest.seconds, "s")}${doubt}`,
    };
  const { shortest } = asked.rangeAt(trial.current);
  const edge = Number.isFinite(shortest.seconds)
    ? `takes less than ${say(shortest.seconds, "s")}`
    : "trips here at all";
  return {
    verdict: "outside the computed band",
    why: `outside the computed band: tripped after ${say(trial.time, "s")}; no strip of one time constant that meets the printed points ${edge}; not a limit of the standard${beyondAir(asked, "hold")}${doubt}`,
  };
};

const high = (asked: Asked, trial: Trial, { current, time }: Reading): Verdict => {
  const limit = mustTripWithin(asked, current);
  const [word, did] = trial.outcome === "held" ? ["did not trip in time", "held for"] : ["late", "tripped after"];
  if (limit && time > limit.seconds)
    return { verdict: word, why: `beyond a printed limit: ${did} ${say(trial.time, "s")}; ${cited(limit)}` };
  const longest = say(asked.rangeAt(trial.current).longest.seconds, "s");
  if (!asked.bench)
    return { verdict: word, why: `beyond the own band: ${did} ${say(trial.time, "s")}, not after ${longest}` };
  return {
    verdict: trial.outcome === "held" ? word : "outside the computed band",
    why: `outside the computed band: ${did} ${say(trial.time, "s")}; no strip of one time constant that meets the printed points takes more than ${longest}; not a limit of the standard${beyondAir(asked, "trip")}`,
  };
};

/** Why no printed limit reaches a trial in such air, where that is the reason. */
const beyondAir = ({ characteristic, conditions: { ambient } }: Asked, kind: "hold" | "trip"): string => {
  if (!characteristic || ambient === undefined) return "";
  const { calibration, holdCalibration = calibration } = characteristic;
  if (kind === "trip" && ambient < calibration)
    return `, whose trip times reach no air below ${say(calibration, "°C")}`;
  return kind === "hold" && ambient > holdCalibration
    ? `, whose hold times reach no air above ${say(holdCalibration, "°C")}`
    : "";
};

const cited = ({ test, source }: Limit): string => `${test} (${citation(source)})`;

const inside = (asked: Asked, { current, time, outcome }: Trial): string => {
  const range = asked.rangeAt(current);
  const did = `${outcome === "held" ? "held for" : "tripped after"} ${say(time, "s")}`;
  if (outcome === "held" && range.shortest.line === "holds")
    return asked.bench?.ratedClass.holdSeconds === undefined
      ? `${did}, as it must; the test goes on until temperatures are stable`
      : `${did}, as it must at and below its rating`;
  return `${did}; a sound breaker may take ${fromTo(range)}${range.thermalOnly ? " (thermal only: the magnetic band is not known)" : ""}`;
};

const tooClose = (asked: Asked, { current, currentError, time, timeError }: Trial): string =>
  `${say(current, "A")} ± ${say(currentError, "A")} and ${say(time, "s")} ± ${say(timeError, "s")} lie on both sides of a line (here ${fromTo(asked.rangeAt(current))})`;

const fromTo = ({ shortest, longest }: TripRange): string => {
  if (!Number.isFinite(shortest.seconds)) return "for ever";
  if (Number.isFinite(longest.seconds)) return `${say(shortest.seconds, "s")} to ${say(longest.seconds, "s")}`;
  return shortest.seconds === 0 ? "any time" : `${say(shortest.seconds, "s")} or any time longer`;
};
