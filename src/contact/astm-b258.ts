import { loneValues, type Source } from "../metrology/source";

/** The thinnest gauge of the rule, its diameter in mm, and how much thicker the thickest is, that many even steps away. */
const thinnest = { gauge: 36, millimetres: 0.127 } as const;
const steps = 39;
const thicker = 92;

/** Diameter of an AWG size in mm; 1/0 to 4/0 are the gauges 0 to −3. */
export const awgDiameterMillimetres = (gauge: number): number =>
  thinnest.millimetres * thicker ** ((thinnest.gauge - gauge) / steps);

export const astmB258: Source = {
  document: "ASTM B258",
  place: "rule of the gauges",
  standing: "corroborated",
  tables: [
    {
      title: "Diameters of AWG sizes",
      columns: loneValues,
      rows: [
        [`diameter of ${thinnest.gauge} AWG`, thinnest.millimetres, "mm"],
        ["4/0 AWG is thicker", thicker, "×"],
        ["even steps between them", steps, ""],
      ],
      guard: "test/contact/copper.published.test.ts",
    },
  ],
};
