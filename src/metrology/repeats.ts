/** What repeated readings tell: JCGM 100, 4.2. */
interface Repeats {
  readonly mean: number;
  /** Experimental standard deviation of one reading. */
  readonly s: number;
  /** Standard uncertainty of the mean, s ÷ √n. */
  readonly u: number;
  readonly degrees: number;
}

/** At least two readings, equally good and independent. */
export const repeatsOf = (readings: readonly number[]): Repeats => {
  const n = readings.length;
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / n;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  const s = Math.sqrt(squares / (n - 1));
  return { mean, s, u: s / Math.sqrt(n), degrees: n - 1 };
};
