import { studentCdfWith } from "../metrology/student";
import type { Fitted, ProfileRow } from "./fitted";
import { lnTimeConstants } from "./trial";

/** A steady current, A, after a long steady preload, A (0: cold). */
export interface Shot {
  readonly current: number;
  readonly preload: number;
}

/** How sure it is that the pickup lies below each profile row: Student's t of the signed root of the likelihood's drop. */
const confidences = ({ profile, pickup, tripped }: Fitted): number[] => {
  const dof = tripped - 2;
  const below = studentCdfWith(dof);
  return profile.map((row) => {
    const t = Math.sqrt(dof * Math.expm1((2 * row.drop) / tripped));
    return below(row.pickup < pickup.value ? -t : t);
  });
};

/** A row between two rows: what runs straight there is the pickup and, in logarithms, pickup²·τ, which far above the pickup is all that counts. */
const between = (a: ProfileRow, b: ProfileRow, share: number): ProfileRow => {
  const straight = (from: number, to: number) => from + share * (to - from);
  const geometric = (from: number, to: number) => from * (to / from) ** share;
  const pickup = straight(a.pickup, b.pickup);
  return {
    pickup,
    drop: straight(a.drop, b.drop),
    timeConstant: geometric(a.timeConstant * a.pickup ** 2, b.timeConstant * b.pickup ** 2) / pickup ** 2,
    scatter: geometric(a.scatter, b.scatter),
    error: geometric(a.error, b.error),
  };
};

/** Cells between two profile rows are averaged at this many places. */
const places = 4;

/**
 * The pickup as the profile tells it: pieces of equal standing with their weights, which add up to 1.
 * What lies beyond the outermost rows is put on them.
 */
const pieces = (fitted: Fitted): { row: ProfileRow; weight: number }[] => {
  const { profile } = fitted;
  const below = confidences(fitted);
  const found: { row: ProfileRow; weight: number }[] = [];
  profile.forEach((row, i) => {
    if (i === 0) found.push({ row, weight: below[0] as number });
    const next = profile[i + 1];
    if (!next) {
      found.push({ row, weight: 1 - (below[i] as number) });
      return;
    }
    const weight = ((below[i + 1] as number) - (below[i] as number)) / places;
    for (let k = 0; k < places; k++) found.push({ row: between(row, next, (k + 0.5) / places), weight });
  });
  return found;
};

/**
 * Probability that the breaker has tripped by ln t: over all pickups that the trials leave open, each with its own time constant
 * and scatter. Beside one pickup the next ln t follows Student's t with n − 1 degrees of freedom; mixed over the pickup that is
 * the usual prediction with n − 2 where the profile is a plain hill, and stays right where it is not.
 */
export const trippedBy = (fitted: Fitted, shot: Shot): ((lnSeconds: number) => number) => {
  const n = fitted.tripped;
  const parts = pieces(fitted).map(({ row, weight }) => ({
    weight,
    middle: Math.log(row.timeConstant) + lnTimeConstants(shot, row.pickup).value,
    spread: Math.sqrt((n / (n - 1)) * (row.scatter ** 2 + row.error ** 2)),
  }));
  const below = studentCdfWith(n - 1);
  return (lnSeconds) =>
    parts.reduce((sum, { weight, middle, spread }) => {
      if (middle === Infinity || weight === 0) return sum;
      return sum + weight * (middle === -Infinity ? 1 : below((lnSeconds - middle) / spread));
    }, 0);
};
