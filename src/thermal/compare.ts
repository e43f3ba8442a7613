import { NoAnswer } from "../metrology/no-answer";
import { studentQuantile } from "../metrology/student";

/** Ratio of the median trip times after to before, with 95 % limits. */
interface Compared {
  readonly ratio: number;
  /** `not known`: no two times of one sample differ. */
  readonly low: number | "not known";
  readonly high: number | "not known";
  /** Degrees of freedom of the common scatter, and that scatter of ln t. */
  readonly dof: number;
  readonly scatter: number;
}

/**
 * Times (s) of one breaker at one current, before and after something: the difference of the means of ln t with Student's t and one
 * scatter for both samples, so that a single as-found time may stand against repeats. Log-normal times as in the fit.
 */
export const compared = (before: readonly number[], after: readonly number[]): Compared => {
  const [first, second] = [spreadOf(before), spreadOf(after)];
  const dof = before.length + after.length - 2;
  if (dof < 1)
    throw new NoAnswer(
      "times: one time before and one after show no scatter to judge their ratio by; repeat the trial, rested, at least once.",
    );
  const ratio = Math.exp(second.mean - first.mean);
  const scatter = Math.sqrt((first.squares + second.squares) / dof);
  if (scatter < 1e-12) return { ratio, low: "not known", high: "not known", dof, scatter };
  const margin = studentQuantile(0.975, dof) * scatter * Math.sqrt(1 / before.length + 1 / after.length);
  return { ratio, low: ratio * Math.exp(-margin), high: ratio * Math.exp(margin), dof, scatter };
};

const spreadOf = (seconds: readonly number[]): { mean: number; squares: number } => {
  const logs = seconds.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  return { mean, squares: logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) };
};
