import { normalCdf, normalQuantile } from "./normal";
import { root } from "./root";

/** ln of Γ(a+½)/Γ(a): Stirling's series about a − ¼ (its odd terms vanish), after lifting a to 20. */
const lnGammaStep = (a: number): number => {
  let lifted = 0;
  let at = a;
  for (; at < 20; at++) lifted += Math.log1p(-0.5 / (at + 0.5));
  const x = 1 / (4 * at - 1) ** 2;
  return lifted + Math.log(at - 0.25) / 2 + x * (1 / 4 + x * (-5 / 8 + x * (61 / 12 - (x * 1385) / 16)));
};

/** Lentz's guard against a zero below the fraction. */
const lifted = (value: number): number => (value < 1e-300 && value > -1e-300 ? 1e-300 : value);

/**
 * The continued fraction of the incomplete beta function, Lentz's way (Numerical Recipes, section 6.4):
 * I_x(a, b) = fraction · x^a (1−x)^b / (a·B(a, b)), quick for x < (a+1)/(a+b+2).
 */
const betaFraction = (x: number, a: number, b: number): number => {
  let c = 1;
  let d = 1 / lifted(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / lifted(1 + even * d);
    c = lifted(1 + even / c);
    fraction *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / lifted(1 + odd * d);
    c = lifted(1 + odd / c);
    fraction *= c * d;
    const change = c * d - 1;
    if (change < 2e-16 && change > -2e-16) break;
  }
  return fraction;
};

/** For t > 0: the probability between 0 and t, and beyond t. Each keeps its digits where it is the smaller one. */
type Shares = (t: number) => { within: number; beyond: number };

/** What depends on the degrees of freedom alone is worked out once. */
const sharesWith = (dof: number): Shares => {
  const lnStep = lnGammaStep(dof / 2) - Math.log(Math.PI) / 2;
  return (t) => {
    const s = t / Math.sqrt(dof);
    const [inside, outside] = [s > 1 ? 1 / (1 + 1 / (s * s)) : (s * s) / (1 + s * s), 1 / (1 + s * s)];
    // x^a (1−x)^b / B(a, b) for a = ½, b = dof/2, and the same for the two exchanged.
    const lnFront =
      s > 1e150 ? lnStep - dof * Math.log(s) : lnStep + Math.log(inside) / 2 - (dof / 2) * Math.log1p(s * s);
    if (inside < 1.5 / (dof / 2 + 2.5)) {
      const within = Math.exp(lnFront) * betaFraction(inside, 0.5, dof / 2);
      return { within, beyond: 0.5 - within };
    }
    const beyond = (Math.exp(lnFront) * betaFraction(outside, dof / 2, 0.5)) / dof;
    return { within: 0.5 - beyond, beyond };
  };
};

/** Student's t distribution: the probability to lie below t. `dof` is any real number above 0; Infinity is the normal distribution. */
export const studentCdfWith = (dof: number): ((t: number) => number) => {
  if (dof === Infinity) return normalCdf;
  const shares = sharesWith(dof);
  return (t) => {
    if (t === 0) return 0.5;
    const { within, beyond } = shares(Math.abs(t));
    return t < 0 ? beyond : within < 0.25 ? 0.5 + within : 1 - beyond;
  };
};

/** The t below which a share p of Student's distribution lies, 0 < p < 1; the coverage factor for 95 % is studentQuantile(0.975, dof). */
export const studentQuantile = (p: number, dof: number): number => {
  if (dof === Infinity || !(p > 0 && p < 1)) return normalQuantile(p);
  if (p === 0.5) return 0;
  const shares = sharesWith(dof);
  const within = Math.abs(p - 0.5);
  const beyond = Math.min(p, 1 - p);
  const misses = (lnT: number): number => {
    const found = shares(Math.exp(lnT));
    return within < 0.25 ? Math.log(found.within / within) : Math.log(beyond / found.beyond);
  };
  // From far inside the smallest share a double can name to beyond the largest t it can.
  let [low, high] = [-1, 1];
  while (misses(low) > 0 && low > -700) low *= 2;
  while (misses(high) < 0 && high < 700) high *= 2;
  return Math.sign(p - 0.5) * Math.exp(root(misses, low, high));
};
