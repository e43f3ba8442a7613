import { loneValues, type Source } from "../metrology/source";

// ANSI/NETA acceptance and maintenance testing specifications (ATS, MTS), low-voltage insulated-case and moulded-case breakers.

/** A pole above this multiple of the lowest pole is to be investigated; it is no failure. */
export const investigateAbove = 1.5;

export const investigateSource: Source = {
  document: "ANSI/NETA ATS and MTS",
  place: "7.6.1.1 (more than 50 % above the lowest pole)",
  standing: "corroborated",
  tables: [
    {
      title: "Poles compared",
      columns: loneValues,
      rows: [["investigate above this multiple of the lowest pole's resistance", investigateAbove, "×"]],
      guard: "test/contact/spread.test.ts",
    },
  ],
};
