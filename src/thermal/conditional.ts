import { normalSlope } from "../metrology/normal";
import { root } from "../metrology/root";
import { type Censored, logLikelihood } from "./censored";

// Beside one pickup the trials are a sample of one location (ln τ) and one scatter. Here one of the two is held still and the
// other is the likeliest: the sides of the likelihood, from which the limits of time constant and scatter are read.

interface Top {
  readonly lnTimeConstant: number;
  readonly scatter: number;
  readonly logLikelihood: number;
}

/** Highest log-likelihood with this ln τ. */
const withLocation = (data: Censored, location: number): number => {
  let seen = 0;
  let squares = 0;
  data.y.forEach((y, i) => {
    if (data.held[i]) return;
    seen++;
    squares += (y - location) ** 2;
  });
  const start = Math.log(Math.sqrt(squares / seen));
  const at = (lnScale: number) => logLikelihood(data, Math.exp(-lnScale), [location * Math.exp(-lnScale)]);
  if (!data.held.includes(true)) return at(start);
  // Derivative by ln σ: it falls through zero once.
  const slope = (lnScale: number): number => {
    let sum = -seen + squares * Math.exp(-2 * lnScale);
    data.y.forEach((y, i) => {
      const z = (y - location) * Math.exp(-lnScale);
      if (data.held[i]) sum += z * normalSlope(-z);
    });
    return sum;
  };
  const first = slope(start);
  if (first === 0) return at(start);
  let other = start + Math.sign(first) * 0.1;
  while (slope(other) * first > 0) other += 2 * (other - start);
  return at(root(slope, start, other));
};

/** Highest log-likelihood with this scatter. */
const withScale = (data: Censored, scale: number): number => {
  const seen = data.y.filter((_, i) => !data.held[i]);
  const mean = seen.reduce((sum, y) => sum + y, 0) / seen.length;
  const at = (location: number) => logLikelihood(data, 1 / scale, [location / scale]);
  if (!data.held.includes(true)) return at(mean);
  // Derivative by the location, times σ²: holds only pull upward.
  const slope = (location: number): number => {
    let sum = seen.length * (mean - location);
    data.y.forEach((y, i) => {
      if (data.held[i]) sum += scale * normalSlope((location - y) / scale);
    });
    return sum;
  };
  if (slope(mean) === 0) return at(mean);
  let high = mean + scale;
  while (slope(high) > 0) high += 2 * (high - mean);
  return at(root(slope, mean, high));
};

/** The ln τ on one side of the top where the highest log-likelihood has fallen to a level. */
export const locationLimit = (data: Censored, top: Top, level: number, side: 1 | -1): number => {
  const above = top.logLikelihood - level;
  if (above <= 0) return top.lnTimeConstant;
  const seen = data.held.filter((held) => !held).length;
  // Exact when nothing is held: n/2·ln(1 + h²/σ²) = the drop.
  const width = top.scatter * Math.sqrt(Math.expm1((2 * above) / seen));
  if (!data.held.includes(true)) return top.lnTimeConstant + side * width;
  const drop = (h: number) => withLocation(data, top.lnTimeConstant + side * h) - level;
  if (drop(0) <= 0) return top.lnTimeConstant;
  let out = 1.1 * width;
  while (drop(out) > 0) out *= 1.5;
  return top.lnTimeConstant + side * root(drop, 0, out);
};

/** ln of the scatter on one side of the top where the highest log-likelihood has fallen to a level. */
export const scaleLimit = (data: Censored, top: Top, level: number, side: 1 | -1): number => {
  const lnTop = Math.log(top.scatter);
  const drop = (h: number) => withScale(data, Math.exp(lnTop + side * h)) - level;
  if (drop(0) <= 0) return lnTop;
  let out = 0.5;
  while (drop(out) > 0) out *= 1.5;
  return lnTop + side * root(drop, 0, out);
};
