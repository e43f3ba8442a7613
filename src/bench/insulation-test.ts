import { loneValues, type Source } from "../metrology/source";

// How the insulation of a breaker is tested, whatever its least value is.

/** The test voltage is on for so long before the reading counts, s. */
export const insulationSeconds = 60;

/** Afterwards the parts are discharged for this many times as long. */
export const dischargeTimes = 4;

const guard = "test/bench/insulation.test.ts";

export const oneMinute: Source = {
  document: "ANSI/NETA ATS and MTS",
  place: "Table 100.1, how long",
  standing: "from memory",
  tables: [
    {
      title: "Insulation test",
      columns: loneValues,
      rows: [["test voltage on, before the reading", insulationSeconds, "s"]],
      guard,
    },
  ],
};

export const discharge: Source = {
  document: "NASA LLIS-0848",
  place: "discharge after an insulation test",
  standing: "corroborated",
  tables: [
    {
      title: "Discharge after an insulation test",
      columns: loneValues,
      rows: [["of the test time, at least", dischargeTimes, "×"]],
      guard,
    },
  ],
};
