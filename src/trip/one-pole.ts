import type { Source } from "../metrology/source";

/** How much more than the tripping current of all poles together one pole alone may need, by the poles of the breaker. */
export const onePole = { ofTwo: 1.1, ofMore: 1.2 } as const;

export const onePoleSource: Source = {
  document: "IEC 60898-1",
  place: "8.6.3.2, one pole loaded alone",
  standing: "from memory",
  tables: [
    {
      title: "One pole loaded alone",
      columns: [["protected poles"], ["of the conventional tripping current", "×"]],
      rows: [
        ["2", onePole.ofTwo],
        ["3 and 4", onePole.ofMore],
      ],
      guard: "test/trip/one-pole.published.test.ts",
    },
  ],
};
