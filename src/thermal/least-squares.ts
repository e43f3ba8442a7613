import { solveSymmetric } from "./symmetric";

/** Observations y = x·β + σ·ε, ε normal. Of a held one only "at least y" is known (right-censored). */
export interface Censored {
  readonly y: readonly number[];
  readonly held: readonly boolean[];
  /** A row of x for each y. */
  readonly design: readonly (readonly number[])[];
}

/** β and σ of the seen observations alone; with all of them held (or too few seen) of all as if seen, as a start. */
export const leastSquares = ({ y, held, design }: Censored): { coefficients: number[]; scale: number } | undefined => {
  const size = design[0]?.length ?? 0;
  const seen = held.map((h) => !h);
  for (const use of [seen, held.map(() => true)]) {
    const normal = Array.from({ length: size }, () => new Array<number>(size).fill(0));
    const right = new Array<number>(size).fill(0);
    let count = 0;
    for (let i = 0; i < y.length; i++) {
      if (!use[i]) continue;
      count++;
      const x = design[i] as readonly number[];
      for (let k = 0; k < size; k++) {
        right[k] = (right[k] as number) + (x[k] as number) * (y[i] as number);
        for (let l = 0; l < size; l++)
          (normal[k] as number[])[l] = ((normal[k] as number[])[l] as number) + (x[k] as number) * (x[l] as number);
      }
    }
    const coefficients = solveSymmetric(normal, right);
    if (!coefficients) continue;
    let squares = 0;
    for (let i = 0; i < y.length; i++)
      if (use[i]) squares += ((y[i] as number) - dot(design[i] as readonly number[], coefficients)) ** 2;
    const scale = Math.sqrt(squares / count);
    return { coefficients, scale: use === seen ? scale : Math.max(scale, 1e-3) };
  }
  return undefined;
};

/** x·β of one observation. */
export const dot = (x: readonly number[], beta: readonly number[]): number => {
  let sum = 0;
  for (let k = 0; k < x.length; k++) sum += (x[k] as number) * (beta[k] as number);
  return sum;
};
