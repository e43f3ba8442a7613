import type { Source } from "../metrology/source";
import { type Cabinet, type Face, facesOf } from "./cabinet";

const factors = {
  roof: { bare: 1.4, covered: 0.7 },
  side: { bare: 0.9, covered: 0.5 },
  floor: { bare: 0, covered: 0 },
} as const;

export const surfaceFactors: Source = {
  document: "IEC TR 60890",
  place: "surface factors b",
  standing: "corroborated",
  tables: [
    {
      title: "Surface factors",
      columns: [["face"], ["bare"], ["covered"]],
      rows: Object.entries(factors).map(([face, { bare, covered }]) => [face, bare, covered]),
      guard: "test/enclosure/published.test.ts",
    },
  ],
};

/** How well a face passes heat, against a bare area: the roof best, the floor not at all. */
export const surfaceFactor = ({ name, covered }: Face): number => {
  const factor = factors[name === "floor" || name === "roof" ? name : "side"];
  return covered ? factor.covered : factor.bare;
};

/** The effective cooling area, m²: every face weighted by how well it passes heat. */
export const effectiveArea = (cabinet: Cabinet): number =>
  facesOf(cabinet).reduce((sum, face) => sum + surfaceFactor(face) * face.area, 0);
