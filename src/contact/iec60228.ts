import type { Source } from "../metrology/source";

/** Nominal size in mm² and the largest resistance, Ω/km at 20 °C. */
export const squareMillimetreOhmsPerKilometre: readonly (readonly [size: string, ohms: number])[] = [
  ["0.5", 36.0],
  ["0.75", 24.5],
  ["1", 18.1],
  ["1.5", 12.1],
  ["2.5", 7.41],
  ["4", 4.61],
  ["6", 3.08],
  ["10", 1.83],
  ["16", 1.15],
  ["25", 0.727],
  ["35", 0.524],
  ["50", 0.387],
  ["70", 0.268],
  ["95", 0.193],
  ["120", 0.153],
  ["150", 0.124],
  ["185", 0.0991],
  ["240", 0.0754],
  ["300", 0.0601],
  ["400", 0.047],
];

/** Other wires against the table's: fine-stranded copper (class 5) has at most so many times as much, aluminium about. */
export const otherWires = { fineStranded: 1.1, aluminium: 1.66 } as const;

export const iec60228: Source = {
  document: "IEC 60228",
  edition: "2004",
  place: "Table 2, class 2, plain copper, largest resistance at 20 °C",
  standing: "corroborated",
  tables: [
    {
      title: "Largest resistance at 20 °C",
      columns: [
        ["size", "mm²"],
        ["resistance", "Ω/km"],
      ],
      rows: squareMillimetreOhmsPerKilometre,
      standings: squareMillimetreOhmsPerKilometre.map(([size]) =>
        Number(size) > 240 ? "from memory" : "corroborated",
      ),
      guard: "test/contact/conductor.test.ts",
    },
    {
      title: "Other wires against these",
      columns: [["wire"], ["of that resistance", "×"]],
      rows: [
        ["fine-stranded copper (class 5), at most", otherWires.fineStranded],
        ["aluminium (class 2), about", otherWires.aluminium],
      ],
      standings: ["from memory", "from memory"],
      guard: "test/contact/conductor.test.ts",
    },
  ],
};
