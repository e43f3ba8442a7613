import { lnNormalCdf, normalSlope } from "../metrology/normal";
import { dot, leastSquares } from "./least-squares";
import { solveSymmetric } from "./symmetric";

/** Observations y = x·β + σ·ε, ε normal. Of a held one only "at least y" is known (right-censored). */
export interface Censored {
  readonly y: readonly number[];
  readonly held: readonly boolean[];
  /** A row of x for each y. */
  readonly design: readonly (readonly number[])[];
}

/** The likeliest β and σ. */
export interface Likeliest {
  readonly coefficients: readonly number[];
  readonly scale: number;
  /** ln of the density of y for those seen, of the probability of at least y for those held. */
  readonly logLikelihood: number;
  /** How the log-likelihood answers when x·β of one observation is raised alone: its derivative. */
  readonly pulls: readonly number[];
}

export const halfLog2Pi = Math.log(2 * Math.PI) / 2;

/** Below this scatter the likelihood has no top: it grows for ever as σ falls. */
const noScatter = 1e-12;

/**
 * Maximum likelihood. In 1/σ and β/σ the log-likelihood is concave (Burridge, J. R. Stat. Soc. B 43 (1981) 41),
 * so Newton's steps, halved where they overshoot, arrive from any start. Undefined when the design cannot be told apart.
 */
export const likeliest = (data: Censored): Likeliest | undefined => {
  const start = leastSquares(data);
  if (!start) return undefined;
  if (!data.held.includes(true) || start.scale <= noScatter) return summed(data, start.coefficients, start.scale);
  // Told from the start's own line: then a scatter however small still shows beside the numbers.
  const near = { ...data, y: data.y.map((y, i) => y - dot(data.design[i] as readonly number[], start.coefficients)) };
  let [alpha, gamma] = [1 / start.scale, start.coefficients.map(() => 0)];
  let now = logLikelihood(near, alpha, gamma);
  for (let step = 0; step < 200; step++) {
    const { gradient, curvature } = slopes(near, alpha, gamma);
    const move = solveSymmetric(curvature, gradient);
    if (!move) return undefined;
    const gain = move.reduce((sum, part, i) => sum + part * (gradient[i] as number), 0);
    let share = 1;
    for (; share > 1e-10; share /= 2) {
      const nextAlpha = alpha + share * (move[0] as number);
      const nextGamma = gamma.map((value, k) => value + share * (move[k + 1] as number));
      const next = nextAlpha > 0 ? logLikelihood(near, nextAlpha, nextGamma) : -Infinity;
      if (next >= now - 1e-13 * Math.abs(now)) {
        [alpha, gamma, now] = [nextAlpha, nextGamma, next];
        break;
      }
    }
    // The last step is taken too: what is left is the square of what it was.
    if (gain < 1e-15 || share <= 1e-10 || alpha > 1 / noScatter) break;
  }
  return summed(
    data,
    start.coefficients.map((value, k) => value + (gamma[k] as number) / alpha),
    1 / alpha,
  );
};

/** Of the observations, at α = 1/σ and γ = β/σ. */
export const logLikelihood = ({ y, held, design }: Censored, alpha: number, gamma: readonly number[]): number => {
  let sum = 0;
  for (let i = 0; i < y.length; i++) {
    const z = alpha * (y[i] as number) - dot(design[i] as readonly number[], gamma);
    sum += held[i] ? lnNormalCdf(-z) : Math.log(alpha) - halfLog2Pi - (z * z) / 2;
  }
  return sum;
};

/** Gradient and negative second derivatives of the log-likelihood in (1/σ, β/σ). */
const slopes = ({ y, held, design }: Censored, alpha: number, gamma: readonly number[]) => {
  const size = gamma.length + 1;
  const gradient = new Array<number>(size).fill(0);
  const curvature = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  // z = (1/σ)·y − (β/σ)·x, so y and −x are its derivatives.
  const along = new Array<number>(size);
  for (let i = 0; i < y.length; i++) {
    const x = design[i] as readonly number[];
    const z = alpha * (y[i] as number) - dot(x, gamma);
    const pull = held[i] ? normalSlope(-z) : z;
    const stiffness = held[i] ? pull * (pull - z) : 1;
    along[0] = y[i] as number;
    for (let k = 1; k < size; k++) along[k] = -(x[k - 1] as number);
    for (let k = 0; k < size; k++) {
      const row = curvature[k] as number[];
      gradient[k] = (gradient[k] as number) - pull * (along[k] as number);
      for (let l = 0; l < size; l++)
        row[l] = (row[l] as number) + stiffness * (along[k] as number) * (along[l] as number);
    }
  }
  const seen = held.filter((h) => !h).length;
  gradient[0] = (gradient[0] as number) + seen / alpha;
  (curvature[0] as number[])[0] = ((curvature[0] as number[])[0] as number) + seen / (alpha * alpha);
  return { gradient, curvature };
};

const summed = (data: Censored, coefficients: readonly number[], scale: number): Likeliest => {
  const sigma = Math.max(scale, Number.MIN_VALUE * 2 ** 60);
  const gamma = coefficients.map((value) => value / sigma);
  const pulls = data.y.map((value, i) => {
    const z = value / sigma - dot(data.design[i] as readonly number[], gamma);
    return (data.held[i] ? normalSlope(-z) : z) / sigma;
  });
  return { coefficients, scale, logLikelihood: logLikelihood(data, 1 / sigma, gamma), pulls };
};
