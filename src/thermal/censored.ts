import { normalSlope } from "../metrology/normal";
import { type Censored, dot, leastSquares } from "./least-squares";
import { logLikelihood, sampleFrom, slopes } from "./likelihood";
import { solveSymmetric } from "./symmetric";

/** β and σ. */
interface Line {
  readonly coefficients: readonly number[];
  readonly scale: number;
}

/** The likeliest β and σ. */
interface Likeliest extends Line {
  readonly logLikelihood: number;
  /** How the log-likelihood answers when x·β of one observation is raised alone: its derivative. */
  readonly pulls: readonly number[];
}

/** Below this scatter the likelihood has no top: it grows for ever as σ falls. */
const noScatter = 1e-12;

/**
 * Maximum likelihood. In 1/σ and β/σ the log-likelihood is concave (Burridge, J. R. Stat. Soc. B 43 (1981) 41),
 * so Newton's steps, halved where they overshoot, arrive from any start; `near` only makes them fewer. Undefined when the design
 * cannot be told apart.
 */
export const likeliest = (data: Censored, near?: Line): Likeliest | undefined => {
  const seen = leastSquares(data);
  if (!seen) return undefined;
  const searched = data.held.includes(true) && seen.scale > noScatter;
  const start = searched && near ? near : seen;
  const sample = sampleFrom(data, start.coefficients);
  let alpha = 1 / Math.max(start.scale, Number.MIN_VALUE * 2 ** 60);
  let gamma = start.coefficients.map(() => 0);
  let now = logLikelihood(sample, alpha, gamma);
  for (let step = 0; searched && step < 200; step++) {
    const { gradient, curvature } = slopes(sample, alpha, gamma);
    const move = solveSymmetric(curvature, gradient);
    if (!move) return start === near ? likeliest(data) : undefined;
    const gain = move.reduce((sum, part, i) => sum + part * (gradient[i] as number), 0);
    let share = 1;
    for (; share > 1e-10; share /= 2) {
      const nextAlpha = alpha + share * (move[0] as number);
      const nextGamma = gamma.map((value, k) => value + share * (move[k + 1] as number));
      const next = nextAlpha > 0 ? logLikelihood(sample, nextAlpha, nextGamma) : -Infinity;
      if (next >= now - 1e-13 * Math.abs(now)) {
        [alpha, gamma, now] = [nextAlpha, nextGamma, next];
        break;
      }
    }
    // The last step is taken too: what is left is the square of what it was.
    if (gain < 1e-15 || share <= 1e-10 || alpha > 1 / noScatter) break;
  }
  const pulls = data.y.map((y, i) => {
    const x = data.design[i] as readonly number[];
    const z = alpha * (y - dot(x, start.coefficients)) - dot(x, gamma);
    return (data.held[i] ? normalSlope(-z) : z) * alpha;
  });
  const coefficients = start.coefficients.map((value, k) => value + (gamma[k] as number) / alpha);
  return { coefficients, scale: searched ? 1 / alpha : start.scale, logLikelihood: now, pulls };
};
