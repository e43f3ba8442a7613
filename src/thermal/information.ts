import { normalSlope } from "../metrology/normal";
import { inverseSymmetric } from "./symmetric";
import { lnTimeConstants, type Trial } from "./trial";

/** A body with the scatter of its trials. */
interface Parameters {
  readonly pickup: number;
  readonly lnTimeConstant: number;
  readonly scatter: number;
}

/** Negative second derivatives of the log-likelihood by ln pickup, ln time constant and ln scatter: the observed information. */
const informationAt = (trials: readonly Trial[], { pickup, lnTimeConstant, scatter }: Parameters): number[][] => {
  let [pp, pt, ps, tt, ts, ss] = [0, 0, 0, 0, 0, 0];
  for (const trial of trials) {
    const { value } = lnTimeConstants(trial, pickup);
    if (value === Infinity) continue;
    const z = (Math.log(trial.seconds) - lnTimeConstant - value) / scatter;
    // Derivatives of ln(time constants) by ln pickup.
    const q = pickup ** 2 / ((trial.current - pickup) * (trial.current + pickup));
    const g = Math.exp(value);
    const first = (2 * q) / g;
    const second = (4 * q * (1 + q)) / g - first * first;
    // Second derivatives of the trial's own log-likelihood, by its mean ln t (m) and ln scatter (s), sign turned.
    const lambda = trial.held ? normalSlope(-z) : z;
    const stiff = trial.held ? lambda * (lambda - z) : 1;
    const mm = stiff / scatter ** 2;
    const ms = (lambda + z * stiff) / scatter;
    const pull = lambda / scatter;
    pp += mm * first * first - pull * second;
    pt += mm * first;
    ps += ms * first;
    tt += mm;
    ts += ms;
    ss += z * (lambda + z * stiff);
  }
  return [
    [pp, pt, ps],
    [pt, tt, ts],
    [ps, ts, ss],
  ];
};

/**
 * Covariance of (ln pickup, ln time constant, ln scatter): the inverse of the observed information. Undefined where the
 * likelihood has no round top (a pickup pinned by a hold).
 */
export const covarianceAt = (trials: readonly Trial[], at: Parameters): number[][] | undefined =>
  inverseSymmetric(informationAt(trials, at));

/** Standard error of ln(time constant) beside one pickup, the scatter being fitted too. */
export const timeConstantErrorAt = (trials: readonly Trial[], at: Parameters): number => {
  const [, [, tt = 0, ts = 0] = [], [, , ss = 0] = []] = informationAt(trials, at);
  return Math.sqrt(ss / (tt * ss - ts * ts));
};
