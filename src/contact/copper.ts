import { loneValues, type Source } from "../metrology/source";

/** Copper's resistance would reach zero this far below 0 °C if its straight line went on, °C. */
export const copperZero = 234.5;

export const copperLine: Source = {
  document: "IEC 60949",
  place: `resistance of copper in proportion to ${copperZero} °C + θ`,
  standing: "corroborated",
  tables: [
    {
      title: "Resistance of copper with temperature",
      columns: loneValues,
      rows: [["its straight line ends below 0 °C by", copperZero, "K"]],
      guard: "test/contact/copper.published.test.ts",
    },
  ],
};
