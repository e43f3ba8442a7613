/** A symmetric matrix, row by row. */
type Symmetric = readonly (readonly number[])[];

/** L of A = L·Lᵀ; undefined if A is not positive definite. */
const cholesky = (matrix: Symmetric): number[][] | undefined => {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? made : (lower[j] as number[]);
      let rest = row[j] as number;
      for (let k = 0; k < j; k++) rest -= (made[k] as number) * (other[k] as number);
      if (j < i) made.push(rest / (other[j] as number));
      else if (rest > 0) made.push(Math.sqrt(rest));
      else return undefined;
    }
    lower.push(made);
  }
  return lower;
};

/** x of A·x = b for a symmetric positive definite A; undefined if it is not. */
export const solveSymmetric = (matrix: Symmetric, right: readonly number[]): number[] | undefined => {
  const lower = cholesky(matrix);
  if (!lower) return undefined;
  const x = [...right];
  for (let i = 0; i < x.length; i++) {
    const row = lower[i] as number[];
    for (let k = 0; k < i; k++) x[i] = (x[i] as number) - (row[k] as number) * (x[k] as number);
    x[i] = (x[i] as number) / (row[i] as number);
  }
  for (let i = x.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < x.length; k++)
      x[i] = (x[i] as number) - ((lower[k] as number[])[i] as number) * (x[k] as number);
    x[i] = (x[i] as number) / ((lower[i] as number[])[i] as number);
  }
  return x;
};

/** The inverse of a symmetric positive definite matrix; undefined if it is not. */
export const inverseSymmetric = (matrix: Symmetric): number[][] | undefined => {
  const columns = matrix.map((_, i) =>
    solveSymmetric(
      matrix,
      matrix.map((__, j) => (i === j ? 1 : 0)),
    ),
  );
  return columns.every((column) => column !== undefined) ? columns : undefined;
};
