import { likeliest } from "./censored";
import type { Censored } from "./least-squares";
import { lnTimeConstants, type Trial } from "./trial";

/** What the trials say if the pickup were this one. */
export interface AtPickup {
  /** A */
  readonly pickup: number;
  /** ln of the likeliest time constant (s) and the likeliest scatter of ln t beside that pickup. */
  readonly lnTimeConstant: number;
  readonly scatter: number;
  /** Of ln t; highest over time constant and scatter. */
  readonly logLikelihood: number;
  /** d logLikelihood / d pickup, per A. */
  readonly slope: number;
}

/**
 * ln t less what the pickup explains of it: what remains is ln τ plus scatter. A trial that held at or below the pickup
 * says nothing and is left out.
 */
export const unexplained = (trials: readonly Trial[], pickup: number): Censored & { slopes: number[] } => {
  const y: number[] = [];
  const held: boolean[] = [];
  const slopes: number[] = [];
  for (const trial of trials) {
    const { value, slope } = lnTimeConstants(trial, pickup);
    if (value === Infinity) continue;
    y.push(Math.log(trial.seconds) - value);
    held.push(trial.held);
    slopes.push(slope);
  }
  return { y, held, design: y.map(() => one), slopes };
};
const one = [1] as const;

/** The likelihood of the trials beside a pickup between every preload and every tripping current; sooner found from one `near` it. */
export const atPickup = (trials: readonly Trial[], pickup: number, near?: AtPickup): AtPickup => {
  const data = unexplained(trials, pickup);
  const best = likeliest(data, near && { coefficients: [near.lnTimeConstant], scale: near.scatter });
  if (!best) throw new RangeError(`no likelihood at a pickup of ${pickup} A`);
  // By the envelope theorem the best time constant and scatter may be held still.
  const slope = best.pulls.reduce((sum, pull, i) => sum + pull * (data.slopes[i] as number), 0);
  const [lnTimeConstant = 0] = best.coefficients;
  return { pickup, lnTimeConstant, scatter: best.scale, logLikelihood: best.logLikelihood, slope };
};
