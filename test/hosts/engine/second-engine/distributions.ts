import fc from "fast-check";
import { type Comparison, compare } from "./compare";
import { cents, positive, share, small, whole } from "./given";

/** Distributions and their inverses. */
export const distributions: readonly Comparison[] = [
  ...compare(
    "NORM.DIST",
    fc.tuple(
      cents,
      small,
      positive.map((n) => 1 + (n % 50)),
      fc.boolean(),
    ),
  ),
  ...compare(
    "NORM.S.DIST",
    fc.tuple(
      whole(-400, 400).map((n) => n / 100),
      fc.boolean(),
    ),
  ),
  ...compare("NORM.INV", fc.tuple(share(20), small, whole(1, 9)), { tolerance: 1e-7 }),
  ...compare("NORM.S.INV", fc.tuple(share(20).filter((p) => p !== 0.5)), { tolerance: 1e-7 }),
  ...compare("T.INV.2T", fc.tuple(share(20), whole(1, 40)), { tolerance: 1e-6 }),
  ...compare(
    "T.DIST.2T",
    fc.tuple(
      whole(1, 400).map((n) => n / 100),
      whole(1, 40),
    ),
    { tolerance: 1e-6 },
  ),
  ...compare("CHISQ.INV.RT", fc.tuple(share(20), whole(1, 40)), { tolerance: 1e-6 }),
  ...compare(
    "F.DIST",
    fc.tuple(
      whole(1, 99).map((n) => n / 10),
      whole(1, 20),
      whole(1, 20),
      fc.boolean(),
    ),
    { tolerance: 1e-6 },
  ),
  ...compare("F.INV.RT", fc.tuple(share(20), whole(1, 20), whole(1, 20)), { tolerance: 1e-6 }),
  ...compare("BINOM.DIST", fc.tuple(whole(0, 5), whole(5, 10), share(10), fc.boolean())),
  ...compare(
    "POISSON.DIST",
    fc.tuple(
      whole(0, 9),
      whole(1, 90).map((n) => n / 10),
      fc.boolean(),
    ),
  ),
  ...compare("CONFIDENCE.T", fc.tuple(share(20), whole(1, 9), whole(2, 30)), { tolerance: 1e-6 }),
  ...compare("GAMMALN", fc.tuple(whole(1, 300).map((n) => n / 10)), { tolerance: 1e-8 }),
  ...compare("STANDARDIZE", fc.tuple(cents, cents, positive)),
];
