import { loneValues, type Source } from "../metrology/source";

// How a magnetic release is tried in the field.

/** s that a current run up by hand until the magnet trips may take (5.6.4.1). */
export const runUpSeconds = { least: 2, most: 5 } as const;

/** Pulses instead (5.6.4.2): cycles of each, and the share of the expected current that the first has. */
export const pulse = { least: 5, most: 10, firstShare: 0.7 } as const;

/** An adjustable release in the field, as multiples of its setting. */
export const fieldBand = { lower: 0.7, upper: 1.4 } as const;

const guard = "test/bench/field-values.published.test.ts";

export const nemaAb4: Source = {
  document: "NEMA AB 4",
  place: "5.3 to 5.7, 6.5 (field tests, run-up, pulses, as found)",
  standing: "corroborated",
  tables: [
    {
      title: "Magnetic release tried in the field",
      columns: loneValues,
      rows: [
        ["run-up, at least", runUpSeconds.least, "s"],
        ["run-up, at most", runUpSeconds.most, "s"],
        ["pulse, at least", pulse.least, "cycles"],
        ["pulse, at most", pulse.most, "cycles"],
        ["first pulse, of the expected current", pulse.firstShare, "×"],
      ],
      guard,
    },
  ],
};

export const table1008: Source = {
  document: "ANSI/NETA ATS and MTS",
  place: "Table 100.8, instantaneous trip in the field",
  standing: "corroborated",
  tables: [
    {
      title: "Magnetic trip in the field, multiples of the marked setting",
      columns: [
        ["no trip at", "×"],
        ["trip at", "×"],
      ],
      rows: [[fieldBand.lower, fieldBand.upper]],
      guard,
    },
  ],
};
