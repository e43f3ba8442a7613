import { normalSlope } from "../metrology/normal";
import { root } from "../metrology/root";
import type { Censored } from "./least-squares";
import { logLikelihood, type Sample, sampleFrom, saysNothing, slopes } from "./likelihood";

// Beside one pickup the trials are a sample of one location (ln τ) and one scatter. Here one of the two is held still and the
// other is the likeliest: the sides of the likelihood, from which the limits of time constant and scatter are read.
// Locations are told from the likeliest.

interface Top {
  readonly lnTimeConstant: number;
  readonly scatter: number;
  readonly logLikelihood: number;
}

/** Which of the two a limit is of, to which log-likelihood it goes down, and on which side of the top. */
export interface Side {
  readonly of: "time constant" | "scatter";
  readonly level: number;
  readonly side: 1 | -1;
}

interface Spot {
  readonly location: number;
  readonly lnScale: number;
}

/** ln of the time constant or of the scatter on one side of the top where the highest log-likelihood has fallen to a level. */
export const limitBeside = (data: Censored, top: Top, side: Side): number => {
  const sample = sampleFrom(data, [top.lnTimeConstant]);
  const near = seenAlone(sample, side);
  if (!near || top.logLikelihood <= side.level) return told(top, { location: 0, lnScale: Math.log(top.scatter) }, side);
  return told(
    top,
    sample.held.length === 0 ? near : (settled(sample, top, near, side) ?? searched(sample, top, side)),
    side,
  );
};

/** How far a limit may lie at most. Undefined where no time constant and scatter reach the level. */
export const limitAtMost = (data: Censored, top: Top, side: Side): number | undefined => {
  const spot = seenAlone(sampleFrom(data, [top.lnTimeConstant]), side);
  return spot && told(top, spot, side);
};

const told = ({ lnTimeConstant }: Top, { location, lnScale }: Spot, { of }: Side): number =>
  of === "time constant" ? lnTimeConstant + location : lnScale;

/** Where the limit would lie if nothing were held. It lies no farther out, since a hold only takes away. */
const seenAlone = ({ seen, squares, products }: Sample, { of, level, side }: Side): Spot | undefined => {
  const mean = (products[0] as number) / seen;
  const variance = squares / seen - mean * mean;
  const drop = -Math.log(2 * Math.PI * variance) - 1 - (2 * level) / seen;
  if (!(drop >= 0)) return undefined;
  // Of ln τ exactly: ln(1 + h²/σ²) = the drop, and the scatter grows by as much.
  if (of === "time constant")
    return {
      location: mean + side * Math.sqrt(variance * Math.expm1(drop)),
      lnScale: (Math.log(variance) + drop) / 2,
    };
  return { location: mean, lnScale: (Math.log(variance) - lnRatio(drop, side)) / 2 };
};

/** ln r of r − 1 − ln r = the drop, r being the likeliest variance ÷ the variance on that side. */
const lnRatio = (drop: number, side: 1 | -1): number =>
  drop === 0
    ? 0
    : root((x) => Math.expm1(x) - x - drop, 0, side > 0 ? -1 - drop : Math.log1p(drop + Math.sqrt(drop * (2 + drop))));

/**
 * Newton's way to the limit, in 1/σ and location/σ, where the likelihood is smoothest: the log-likelihood is the level, and along
 * what is not held still it does not change. Undefined where the way strays.
 */
const settled = (sample: Sample, { scatter }: Top, near: Spot, { of, level, side }: Side): Spot | undefined => {
  let alpha = Math.exp(-near.lnScale);
  let gamma = near.location * alpha;
  for (let step = 0; step < 25; step++) {
    const { gradient, curvature } = slopes(sample, alpha, [gamma]);
    const [a, g] = gradient as [number, number];
    const [[aa, ag], [, gg]] = curvature as [[number, number], [number, number]];
    const above = logLikelihood(sample, alpha, [gamma]) - level;
    // By ln σ beside one location, or by the location beside one σ; then how that changes with 1/σ and with location/σ.
    const [change, byAlpha, byGamma] =
      of === "time constant"
        ? [alpha * a + gamma * g, a - alpha * aa - gamma * ag, g - alpha * ag - gamma * gg]
        : [g, -ag, -gg];
    const determinant = a * byGamma - g * byAlpha;
    const moveAlpha = (g * change - byGamma * above) / determinant;
    const moveGamma = (byAlpha * above - a * change) / determinant;
    alpha += moveAlpha;
    gamma += moveGamma;
    if (!(alpha > 0 && Number.isFinite(gamma))) return undefined;
    if (Math.abs(moveAlpha) > 1e-9 * alpha || Math.abs(moveGamma) > 1e-9 * (1 + Math.abs(gamma))) continue;
    const spot = { location: gamma / alpha, lnScale: -Math.log(alpha) };
    // The level is met on the other side of the top too.
    const out = of === "time constant" ? spot.location : spot.lnScale - Math.log(scatter);
    return side * out > 0 ? spot : undefined;
  }
  return undefined;
};

/** The same by bracketed roots, one inside the other: slower, and never astray. */
const searched = (sample: Sample, top: Top, { of, level, side }: Side): Spot => {
  const lnScale = Math.log(top.scatter);
  const spotAt = (h: number): Spot =>
    of === "time constant" ? { location: side * h, lnScale } : { location: 0, lnScale: lnScale + side * h };
  const highest = (h: number): number =>
    of === "time constant" ? withLocation(sample, spotAt(h).location) : withScale(sample, Math.exp(spotAt(h).lnScale));
  const drop = (h: number) => highest(h) - level;
  if (drop(0) <= 0) return spotAt(0);
  let out = top.scatter;
  while (drop(out) > 0) out *= 1.5;
  return spotAt(root(drop, 0, out));
};

/** Highest log-likelihood with this location. */
const withLocation = (sample: Sample, location: number): number => {
  const { seen, held } = sample;
  const squares = sample.squares - location * (2 * (sample.products[0] as number) - seen * location);
  const start = Math.log(Math.sqrt(squares / seen));
  const at = (lnScale: number) => logLikelihood(sample, Math.exp(-lnScale), [location * Math.exp(-lnScale)]);
  // Derivative by ln σ: it falls through zero once.
  const slope = (lnScale: number): number => {
    let sum = -seen + squares * Math.exp(-2 * lnScale);
    const alpha = Math.exp(-lnScale);
    for (const y of held) {
      const z = (y - location) * alpha;
      if (z > saysNothing) sum += z * normalSlope(-z);
    }
    return sum;
  };
  const first = slope(start);
  if (first === 0) return at(start);
  let other = start + Math.sign(first) * 0.1;
  while (slope(other) * first > 0) other += 2 * (other - start);
  return at(root(slope, start, other));
};

/** Highest log-likelihood with this scatter. */
const withScale = (sample: Sample, scale: number): number => {
  const { seen, held } = sample;
  const mean = (sample.products[0] as number) / seen;
  const at = (location: number) => logLikelihood(sample, 1 / scale, [location / scale]);
  // Derivative by the location, times σ²: holds only pull upward.
  const slope = (location: number): number => {
    let sum = seen * (mean - location);
    for (const y of held) {
      const z = (y - location) / scale;
      if (z > saysNothing) sum += scale * normalSlope(-z);
    }
    return sum;
  };
  if (slope(mean) === 0) return at(mean);
  let high = mean + scale;
  while (slope(high) > 0) high += 2 * (high - mean);
  return at(root(slope, mean, high));
};
