import type { Source } from "../metrology/source";

// NFPA 70 (National Electrical Code). Stranded uncoated copper at 75 °C, direct current. Stranding adds 2 % to the solid wire; each row lies within 0.6 % of
// 1.02 × the resistivity of annealed copper (IEC 60028) ÷ the area, which a test computes.

/** Size (AWG number; "1/0" to "4/0" are 0 to −3) and resistance, Ω/km at 75 °C. */
export const awgOhmsPerKilometre: readonly (readonly [size: string, ohms: number])[] = [
  ["18", 26.1],
  ["16", 16.4],
  ["14", 10.3],
  ["12", 6.5],
  ["10", 4.07],
  ["8", 2.551],
  ["6", 1.608],
  ["4", 1.01],
  ["3", 0.802],
  ["2", 0.634],
  ["1", 0.505],
  ["1/0", 0.399],
  ["2/0", 0.317],
  ["3/0", 0.2512],
  ["4/0", 0.1996],
];

/** Size in kcmil and resistance, Ω/km at 75 °C. */
export const kcmilOhmsPerKilometre: readonly (readonly [size: string, ohms: number])[] = [
  ["250", 0.1687],
  ["300", 0.1409],
  ["350", 0.1205],
  ["400", 0.1053],
  ["500", 0.0845],
  ["600", 0.0704],
  ["750", 0.0563],
  ["1000", 0.0423],
];

const guard = "test/contact/conductor.test.ts";

export const necTable8: Source = {
  document: "NFPA 70",
  place: "Chapter 9, Table 8, stranded uncoated copper at 75 °C",
  standing: "from memory",
  tables: [
    {
      title: "Resistance at 75 °C, AWG sizes",
      columns: [
        ["size", "AWG"],
        ["resistance", "Ω/km"],
      ],
      rows: awgOhmsPerKilometre,
      guard,
    },
    {
      title: "Resistance at 75 °C, kcmil sizes",
      columns: [
        ["size", "kcmil"],
        ["resistance", "Ω/km"],
      ],
      rows: kcmilOhmsPerKilometre,
      guard,
    },
  ],
};
