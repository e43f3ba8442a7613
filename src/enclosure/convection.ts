import type { Source } from "../metrology/source";
import { type Air, airAt } from "./air";

/** How a plate lies to the air: upright, or level with its hot side up (or cold side down), or hot side down. */
export type Facing = "vertical" | "hot up" | "hot down";

export const convectionSources: readonly Source[] = [
  {
    document: "Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1323",
    place: "vertical plate, all Rayleigh numbers",
    standing: "handbook",
  },
  {
    document: "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer",
    place:
      "chapter 9, level plates: 0.54·Ra^¼ and 0.15·Ra^⅓ hot side up, 0.27·Ra^¼ hot side down, length = area ÷ perimeter",
    standing: "handbook",
  },
];

const gravity = 9.80665;

/** Rayleigh number: how strongly warm air drives itself along a plate of `length` (m) that is `difference` (K) off the air. */
export const rayleigh = (air: Air, { difference, length }: { difference: number; length: number }): number =>
  (gravity * air.expansion * Math.abs(difference) * length * length * length * air.prandtl) /
  (air.viscosity * air.viscosity);

/**
 * Nusselt number of a plate in still air.
 * Hot side up the larger of the two laws holds: they meet at Ra = 4.7e6, where the books' own change at 1e7 would leave a
 * step of 6 % and some heats without an answer. Below Ra = 1e4 (small boxes, small rises) the quarter-power law goes on.
 */
export const nusselt = (facing: Facing, ra: number, prandtl: number): number => {
  if (facing === "hot down") return 0.27 * Math.sqrt(Math.sqrt(ra));
  if (facing === "hot up") return Math.max(0.54 * Math.sqrt(Math.sqrt(ra)), 0.15 * Math.cbrt(ra));
  const rootNusselt = 0.825 + (0.387 * Math.sqrt(Math.cbrt(ra))) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27);
  return rootNusselt * rootNusselt;
};

/** A plate and the air before it, °C; `length` is the height of an upright plate, area ÷ perimeter of a level one, m. */
export interface Plate {
  readonly facing: Facing;
  readonly length: number;
  readonly surface: number;
  readonly air: number;
}

/** Heat from the plate to the air by natural convection, W/m² (negative into a colder plate). Air is taken at the film temperature. */
export const convectiveFlux = ({ facing, length, surface, air: away }: Plate): number => {
  const difference = surface - away;
  const air = airAt((surface + away) / 2);
  return (nusselt(facing, rayleigh(air, { difference, length }), air.prandtl) * air.conductivity * difference) / length;
};
