import { lnNormalCdf, normalSlope } from "../metrology/normal";
import { type Censored, dot } from "./least-squares";

/**
 * The same observations, told from a line x·β near the likeliest: a scatter however small still shows beside the numbers. The seen
 * ones enter the likelihood by these sums alone, so that only the held ones are gone through at each step of a search.
 */
export interface Sample {
  readonly seen: number;
  /** Σy², Σxy and Σxx of the seen. */
  readonly squares: number;
  readonly products: readonly number[];
  readonly designs: readonly (readonly number[])[];
  /** y of the held, and a row of x for each. */
  readonly held: readonly number[];
  readonly heldDesign: readonly (readonly number[])[];
}

export const sampleFrom = ({ y, held, design }: Censored, line: readonly number[]): Sample => {
  const kept: number[] = [];
  const heldDesign: (readonly number[])[] = [];
  const products = line.map(() => 0);
  const designs = line.map(() => line.map(() => 0));
  let [seen, squares] = [0, 0];
  for (let i = 0; i < y.length; i++) {
    const x = design[i] as readonly number[];
    const rest = (y[i] as number) - dot(x, line);
    if (held[i]) {
      kept.push(rest);
      heldDesign.push(x);
      continue;
    }
    seen++;
    squares += rest * rest;
    for (let k = 0; k < line.length; k++) {
      const row = designs[k] as number[];
      products[k] = (products[k] as number) + (x[k] as number) * rest;
      for (let l = 0; l < line.length; l++) row[l] = (row[l] as number) + (x[k] as number) * (x[l] as number);
    }
  }
  return { seen, squares, products, designs, held: kept, heldDesign };
};

const halfLog2Pi = Math.log(2 * Math.PI) / 2;

/** A hold that ended so many scatters before its time was up: ln Φ(9) is 1e−19, nothing beside any sum. */
export const saysNothing = -9;

/** Σz² of the seen, z = α·y − x·γ. */
const squaresOf = ({ squares, products, designs }: Sample, alpha: number, gamma: readonly number[]): number => {
  let sum = alpha * alpha * squares;
  for (let k = 0; k < gamma.length; k++)
    sum += (gamma[k] as number) * (dot(designs[k] as readonly number[], gamma) - 2 * alpha * (products[k] as number));
  return sum;
};

/** ln of the density of y for those seen, of the probability of at least y for those held, at α = 1/σ and γ = β/σ. */
export const logLikelihood = (sample: Sample, alpha: number, gamma: readonly number[]): number => {
  let sum = sample.seen * (Math.log(alpha) - halfLog2Pi) - squaresOf(sample, alpha, gamma) / 2;
  for (let i = 0; i < sample.held.length; i++) {
    const z = alpha * (sample.held[i] as number) - dot(sample.heldDesign[i] as readonly number[], gamma);
    if (z > saysNothing) sum += lnNormalCdf(-z);
  }
  return sum;
};

/** Gradient and negative second derivatives of the log-likelihood in (1/σ, β/σ). */
export const slopes = (
  { seen, squares, products, designs, held, heldDesign }: Sample,
  alpha: number,
  gamma: readonly number[],
): { gradient: number[]; curvature: number[][] } => {
  // z = (1/σ)·y − (β/σ)·x, so y and −x are its derivatives.
  const gradient = [
    seen / alpha - alpha * squares + dot(products, gamma),
    ...products.map((product, k) => alpha * product - dot(designs[k] as readonly number[], gamma)),
  ];
  const curvature = [
    [seen / (alpha * alpha) + squares, ...products.map((product) => -product)],
    ...designs.map((row, k) => [-(products[k] as number), ...row]),
  ];
  const along = new Array<number>(gradient.length);
  for (let i = 0; i < held.length; i++) {
    const y = held[i] as number;
    const x = heldDesign[i] as readonly number[];
    const z = alpha * y - dot(x, gamma);
    if (z <= saysNothing) continue;
    const pull = normalSlope(-z);
    const stiffness = pull * (pull - z);
    along[0] = y;
    for (let k = 1; k < along.length; k++) along[k] = -(x[k - 1] as number);
    for (let k = 0; k < along.length; k++) {
      const row = curvature[k] as number[];
      gradient[k] = (gradient[k] as number) - pull * (along[k] as number);
      for (let l = 0; l < along.length; l++)
        row[l] = (row[l] as number) + stiffness * (along[k] as number) * (along[l] as number);
    }
  }
  return { gradient, curvature };
};
