import { loneValues, type Source } from "../metrology/source";
import { type Air, airAt } from "./air";

/** How a plate lies to the air: upright, or level with its hot side up (or cold side down), or hot side down. */
export type Facing = "vertical" | "hot up" | "hot down";

/** Standard acceleration of free fall, m/s². */
const gravity = 9.80665;

/** Nu = (still + driven·Ra^(1/6) ÷ (1 + (prandtl ÷ Pr)^(9/16))^(8/27))² */
export const uprightPlate = { still: 0.825, driven: 0.387, prandtl: 0.492 } as const;
/** Factors of Ra^¼ and Ra^⅓. */
export const levelPlate = { hotUp: { quarter: 0.54, third: 0.15 }, hotDown: 0.27 } as const;

const guard = "test/enclosure/published.test.ts";

export const convectionSources: readonly Source[] = [
  {
    document: "CGPM, 3rd meeting",
    edition: "1901",
    place: "standard acceleration of free fall",
    standing: "handbook",
    tables: [{ title: "Gravity", columns: loneValues, rows: [["g", gravity, "m/s²"]], guard }],
  },
  {
    document: "Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1323",
    place: "vertical plate, all Rayleigh numbers",
    standing: "handbook",
    tables: [
      {
        title: "Upright plate: Nu = (a + b·Ra^(1/6) ÷ (1 + (c ÷ Pr)^(9/16))^(8/27))²",
        columns: [["a"], ["b"], ["c"]],
        rows: [[uprightPlate.still, uprightPlate.driven, uprightPlate.prandtl]],
        guard,
      },
    ],
  },
  {
    document: "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer",
    place: "chapter 9, level plates, length = area ÷ perimeter",
    standing: "handbook",
    tables: [
      {
        title: "Level plate: Nusselt numbers",
        columns: [["hot side"], ["factor"], ["of"]],
        rows: [
          ["up", levelPlate.hotUp.quarter, "Ra^(1/4)"],
          ["up", levelPlate.hotUp.third, "Ra^(1/3)"],
          ["down", levelPlate.hotDown, "Ra^(1/4)"],
        ],
        guard,
      },
    ],
  },
];

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
  if (facing === "hot down") return levelPlate.hotDown * Math.sqrt(Math.sqrt(ra));
  if (facing === "hot up")
    return Math.max(levelPlate.hotUp.quarter * Math.sqrt(Math.sqrt(ra)), levelPlate.hotUp.third * Math.cbrt(ra));
  const { still, driven, prandtl: c } = uprightPlate;
  const rootNusselt = still + (driven * Math.sqrt(Math.cbrt(ra))) / (1 + (c / prandtl) ** (9 / 16)) ** (8 / 27);
  return rootNusselt * rootNusselt;
};

/** A plate and the air before it, °C; `length` is the height of an upright plate, area ÷ perimeter of a level one, m. */
interface Plate {
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
