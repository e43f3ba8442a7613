import { studentQuantile } from "./student";

// JCGM 100 (GUM). A contribution is a sensitivity times a standard uncertainty, cᵢ·u(xᵢ), with its sign.

/** The correlation of inputs i and j, −1 to 1, asked for i < j only. */
type Correlation = (i: number, j: number) => number;

/** Standard uncertainty of a result from its contributions, in its unit: JCGM 100 eq. (10), with eq. (16) for correlated inputs. */
export const combinedUncertainty = (contributions: readonly number[], correlation: Correlation = () => 0): number => {
  let square = 0;
  contributions.forEach((c, i) => {
    square += c * c;
    for (let j = i + 1; j < contributions.length; j++)
      square += 2 * correlation(i, j) * c * (contributions[j] as number);
  });
  // Full correlation may cancel everything, and rounding a little more.
  return Math.sqrt(Math.max(0, square));
};

/** One contribution and how well it is known: n − 1 for n repeats, Infinity for a limit taken as certain. */
interface Contribution {
  readonly amount: number;
  readonly degrees: number;
}

/** Effective degrees of freedom of independent contributions, Welch and Satterthwaite: JCGM 100 eq. (G.2b). Any real number, or Infinity. */
export const effectiveDegrees = (contributions: readonly Contribution[]): number => {
  const total = combinedUncertainty(contributions.map(({ amount }) => amount));
  return total ** 4 / contributions.reduce((sum, { amount, degrees }) => sum + amount ** 4 / degrees, 0);
};

/**
 * Coverage factor for about 95 %: Student's t at the degrees of freedom (not rounded down to a whole number), and 2 where they
 * are as good as without limit. 2 covers a little more than 95 % of a normal distribution and of two rectangular ones (1.65 to 1.90).
 */
export const coverageFactor = (degrees: number): number => (degrees > 1e6 ? 2 : studentQuantile(0.975, degrees));
