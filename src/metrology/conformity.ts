import { exceeds } from "./exceeds";
import { normalCdf } from "./normal";

/** A measured value and the limits it is held against; an infinite limit is none. */
export interface Tested {
  readonly value: number;
  readonly u: number;
  readonly lower: number;
  readonly upper: number;
}

/** The probability that the true value lies within the limits, the measurement being all that is known: JCGM 106, 7. */
export const conformanceProbability = ({ value, u, lower, upper }: Tested): number => {
  const [below, above] = [(lower - value) / u, (upper - value) / u];
  // Both limits above the value: the small tails on the far side keep their digits.
  return below > 0 ? normalCdf(-below) - normalCdf(-above) : normalCdf(above) - normalCdf(below);
};

/** How far inside or outside a limit a value must lie to be decided, in standard uncertainties: the guard band U = 2u of ILAC-G8. */
export const guard = 2;

type Conformity = "conforms" | "does not conform" | "too close to call";

/** Guarded acceptance and guarded rejection (JCGM 106, 8.3): at the edge of a decision the risk of being wrong is 2.3 %. */
export const conformity = ({ value, u, lower, upper }: Tested): Conformity => {
  const band = guard * u;
  if (exceeds(lower - band, value) || exceeds(value, upper + band)) return "does not conform";
  const inside = !exceeds(lower + band, value) && !exceeds(value, upper - band);
  return inside ? "conforms" : "too close to call";
};
