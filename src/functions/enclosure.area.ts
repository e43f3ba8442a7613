import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { effectiveArea, surfaceFactor, surfaceFactors } from "../enclosure/area";
import { facesOf } from "../enclosure/cabinet";
import { say, sayNumber } from "../metrology/say";
import { depth, height, mounting, width } from "./arguments/enclosure";

export default define({
  name: "ENCLOSURE.AREA",
  summary: "The effective cooling area of an enclosure: each face counted by how well it passes heat where it stands.",
  parameters: { height, width, depth, mounting },
  results: [{ name: "effective area", unit: "m²", meaning: "sum of the faces, each times its surface factor" }],
  answers: "row",
  sources: [surfaceFactors],
  cautions: [
    "The area serves the methods IEC TR 60890 and flat; the heat balance counts its faces one by one.",
    "A closed enclosure is meant; openings and fans are not counted.",
  ],
  examples: [
    { cells: [2, 0.8, 0.6, "free"], gives: [5.712], worked: "published: 1.8 × 2.0 × (0.8 + 0.6) + 1.4 × 0.8 × 0.6" },
    { cells: [2, 0.6, 0.5, "free"], gives: [4.38], worked: "published: 1.8 × 2.0 × (0.6 + 0.5) + 1.4 × 0.6 × 0.5" },
    {
      cells: [0.6, 0.4, 0.12, "wall"],
      gives: [0.5328],
      worked: "hand-worked: 1.4 × 0.4 × (0.6 + 0.12) + 1.8 × 0.12 × 0.6",
    },
  ],
  calculate: (cabinet) => [effectiveArea(cabinet)],
  explain: (cabinet, [area]) => {
    const faces = facesOf(cabinet).map((face) => ({ ...face, b: surfaceFactor(face) }));
    const counted = faces.filter(({ b }) => b > 0);
    return {
      steps: [
        {
          sentence:
            "Each face counts with its surface factor: 1.4 for a bare roof and 0.7 for a covered one, 0.9 for a bare side and 0.5 for one against a wall or a neighbour, 0 for the floor",
          plain: faces
            .map(({ name, area, covered, b }) => `${covered ? "covered " : ""}${name} ${say(area, "m²")} × ${b}`)
            .join("; "),
        },
        {
          sentence: "Their sum is the effective area",
          tex: String.raw`A_e = \sum b\,A_0 = ${counted.map(({ area, b }) => String.raw`${b}\cdot ${tex(area)}`).join(" + ")} = ${tex(Number(area), "m²", 5)}`,
          plain: `Ae = ${counted.map(({ area, b }) => `${b} × ${sayNumber(area)}`).join(" + ")} = ${say(Number(area), "m²", 5)}`,
        },
      ],
      answer: `The enclosure cools like ${say(Number(area), "m²", 5)} of plain surface.`,
    };
  },
});
