import type { Source } from "../metrology/source";
import { type Cabinet, type Face, facesOf } from "./cabinet";

export const surfaceFactors: Source = {
  document: "IEC TR 60890",
  place: "surface factors b: roof 1.4 (covered 0.7), sides 0.9 (covered 0.5), floor 0",
  standing: "corroborated",
};

/** How well a face passes heat, against a bare area: the roof best, the floor not at all. */
export const surfaceFactor = ({ name, covered }: Face): number => {
  if (name === "floor") return 0;
  if (name === "roof") return covered ? 0.7 : 1.4;
  return covered ? 0.5 : 0.9;
};

/** The effective cooling area, m²: every face weighted by how well it passes heat. */
export const effectiveArea = (cabinet: Cabinet): number =>
  facesOf(cabinet).reduce((sum, face) => sum + surfaceFactor(face) * face.area, 0);
