import { loneValues, type Source } from "../metrology/source";
import {
  exponent,
  largeConstants,
  largeTopFactors,
  partitionFactors,
  smallConstants,
  smallTopFactors,
  smallUpTo,
  topCurves,
} from "./iec60890-tables";

const guard = "test/enclosure/iec60890.test.ts";

export const iec60890: Source = {
  document: "IEC TR 60890",
  place: "closed enclosures: k, c, d and the exponent (check against the standard)",
  standing: "from memory",
  tables: [
    {
      title: "Exponent of the heat",
      columns: loneValues,
      rows: [["exponent", exponent, ""]],
      guard,
    },
    {
      title: "Where a small enclosure ends",
      columns: loneValues,
      rows: [["effective area up to", smallUpTo, "m²"]],
      guard: "test/enclosure/published.test.ts",
    },
    {
      title: "Constant k of small enclosures",
      columns: [["effective area", "m²"], ["k"]],
      rows: smallConstants,
      guard,
    },
    {
      title: "Constant k of large enclosures",
      columns: [["effective area", "m²"], ["k"]],
      rows: largeConstants,
      guard,
    },
    {
      title: "Partition factor d of large enclosures",
      columns: [["level partitions"], ["d"]],
      rows: partitionFactors.map((d, partitions) => [partitions, d]),
      guard,
    },
    {
      title: "Top factor c of small enclosures",
      columns: [["height ÷ width"], ["c"]],
      rows: smallTopFactors,
      guard,
    },
    {
      title: "Curve of the top factor of large enclosures",
      columns: [["standing"], ["curve"]],
      rows: Object.entries(topCurves),
      guard: "test/enclosure/published.test.ts",
    },
    {
      title: "Top factor c of large enclosures",
      columns: [["height^1.35 ÷ base area"], ["curve 1"], ["curve 2"], ["curve 3"], ["curve 4"], ["curve 5"]],
      rows: largeTopFactors,
      guard,
    },
  ],
};
