import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import { say, sayNumber, type Unit } from "../../metrology/say";
import { correctedScatter, type End, type Estimate, type Fitted } from "../../thermal/fitted";
import { lnTimeConstants, type Trial } from "../../thermal/trial";
import { sayTrial } from "../arguments/trials";

// What trials tell of a breaker and what they do not, in words.

const sayEnd = (end: End, unit: Unit): string => (typeof end === "number" ? say(end, unit) : end);

const interval = ({ low, high }: Estimate, unit: Unit): string => {
  if (low === "not known" || high === "not known") return "interval not known";
  if (low === "no limit") return `at most ${sayEnd(high, unit)}, no lower limit`;
  if (high === "no limit") return `at least ${sayEnd(low, unit)}, no upper limit`;
  return `${sayEnd(low, unit)} to ${sayEnd(high, unit)} (95 %)`;
};

/** A scatter of ln t as a person reads it: times vary by this factor, in two of three trials. */
const sayFactor = (scatter: number): string => `× or ÷ ${sayNumber(Math.exp(scatter), 3)}`;

export const noteOn = (fitted: Fitted): { pickup: string; timeConstant: string; scatter: string } => {
  const { pickup, pinned, timeConstant } = fitted;
  return {
    pickup: pinned
      ? "pinned: a long hold at this current stands like a wall"
      : pickup.low === "no limit"
        ? "no trial keeps the pickup from lower values"
        : pickup.low === "not known"
          ? "no interval: too few trips, or no scatter"
          : "A; 95 % limits from the likelihood profile",
    timeConstant: timeConstant.high === "no limit" ? "s; a lower pickup goes with any slower strip" : "s",
    scatter: `of ln t: two of three trials within ${sayFactor(fitted.scatter.value)}`,
  };
};

/** How far a trial lies from the fitted curve, in scatters; a hold only if it held for longer than the curve. */
const distance = (fitted: Fitted, trial: Trial): number => {
  const median = Math.log(fitted.timeConstant.value) + lnTimeConstants(trial, fitted.pickup.value).value;
  const spread = correctedScatter(fitted);
  if (median === Infinity || typeof spread !== "number" || spread < 1e-9) return 0;
  const z = (Math.log(trial.seconds) - median) / spread;
  return trial.held ? Math.max(0, z) : z;
};

export const fitSteps = (fitted: Fitted): Step[] => {
  const { pickup, timeConstant, scatter, tripped, held, leftOut } = fitted;
  const spread = correctedScatter(fitted);
  return [
    {
      sentence: `${tripped} trips and ${held} holds${leftOut > 0 ? `; ${leftOut} magnetic or below 0.1 s left out` : ""}. Each trip is taken as the strip's time with a scatter of its own, each hold as the news that its time was not yet up`,
      tex: String.raw`\ln t = \ln\left(\tau \ln\frac{I^2 - I_0^2}{I^2 - I_p^2}\right) + \sigma\varepsilon`,
      plain: "ln t = ln(τ·ln((I² − I₀²)/(I² − Iₚ²))) + σ·ε",
    },
    {
      sentence: "The pickup under which these trials are likeliest, with every other pickup that they leave open",
      tex: `I_p = ${tex(pickup.value, "A", 5)}`,
      plain: `Iₚ = ${say(pickup.value, "A", 5)}: ${interval(pickup, "A")}`,
    },
    {
      sentence: "The time constant",
      tex: String.raw`\tau = ${tex(timeConstant.value, "s")}`,
      plain: `τ = ${say(timeConstant.value, "s")}: ${interval(timeConstant, "s")}`,
    },
    {
      sentence:
        typeof spread === "number"
          ? `The scatter of the times about the curve; the likeliest is a little low, because two quantities were fitted to ${tripped} trips`
          : "The scatter of the times about the curve",
      tex: String.raw`\sigma = ${tex(scatter.value)}`,
      plain: `σ = ${sayNumber(scatter.value)}: ${interval(scatter, "")}${typeof spread === "number" ? `; of one trial ${sayNumber(spread)}, ${sayFactor(spread)}` : ""}`,
    },
    ...tradeOff(fitted),
  ];
};

const tradeOff = ({ covariance }: Fitted): Step[] => {
  const [[pp = 1, pt = 0] = [], [, tt = 1] = []] = covariance ?? [];
  const correlation = pt / Math.sqrt(pp * tt);
  if (Math.abs(correlation) < 0.8) return [];
  return [
    {
      sentence:
        "Pickup and time constant trade off: a lower pickup with a slower strip fits nearly as well. A trial nearer the pickup tells them apart",
      plain: `correlation ${sayNumber(correlation, 5)}`,
    },
  ];
};

/** What these trials in particular call for. */
export const fitCautions = (fitted: Fitted, trials: readonly Trial[]): string[] => {
  const { pickup, pinned, tripped, scatter } = fitted;
  const said: string[] = [];
  if (pinned)
    said.push(
      `The pickup is pinned at ${say(pickup.value, "A")}, which held for very long: it has limits but no standard error.`,
    );
  if (pickup.low === "no limit")
    said.push(
      "All trips lie so far above the pickup that no lower limit can be told: add a trial at a lower current that takes minutes, or a long one that holds.",
    );
  if (pickup.low === "not known")
    said.push(
      tripped > 2
        ? "The times lie on one curve without scatter, as if typed from a formula: no interval can be told from them."
        : "Two trips fix pickup and time constant and leave nothing to tell their error by: repeat them.",
    );
  else if (tripped < 6)
    said.push(
      `Only ${tripped} trips: the intervals are wide because Student's t is, and one odd trial moves everything.`,
    );
  const worst = [...trials].sort((a, b) => Math.abs(distance(fitted, b)) - Math.abs(distance(fitted, a)))[0];
  if (worst && Math.abs(distance(fitted, worst)) > 2.5)
    said.push(
      `One trial lies ${sayNumber(Math.abs(distance(fitted, worst)), 2)} scatters from the curve (${sayTrial(worst)}): check its row. It is counted all the same.`,
    );
  if (scatter.value > 0.25)
    said.push("Times vary by more than a quarter: look for a loose joint, warm restarts, or a current that drifted.");
  return said;
};

/** How much the time hangs on the current, where that matters more than the scatter. */
export const nearPickup = (fitted: Fitted, { current, preload }: Pick<Trial, "current" | "preload">): Step[] => {
  const pickup = fitted.pickup.value;
  if (current <= pickup) return [];
  const { value } = lnTimeConstants({ current, preload }, pickup);
  const square = current ** 2;
  const slope =
    (2 * square * (1 / (square - preload ** 2) - 1 / ((current - pickup) * (current + pickup)))) / Math.exp(value);
  return [
    {
      sentence: `An error of the current setting comes on top: 1 % more current is ${sayNumber(-slope, 2)} % less time here`,
      tex: String.raw`\frac{\mathrm{d}\ln t}{\mathrm{d}\ln I} = ${tex(slope, "", 3)}`,
      plain: `d ln t ÷ d ln I = ${sayNumber(slope, 3)}`,
    },
  ];
};
