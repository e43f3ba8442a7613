import { investigateSource } from "../contact/neta";
import type { Source } from "../metrology/source";
import { table1007 } from "../trip/neta";

/** What the order of a plan and its cautions rest on, beside the document of the characteristic. */
export const planSources: readonly Source[] = [
  { document: "NEMA AB 4", place: "5.3 to 5.7, 6.5 (field tests, run-up, pulses, as found)", standing: "corroborated" },
  { document: "TM 5-683", place: "5-5 (look, operate, insulation)", standing: "corroborated" },
  table1007,
  { document: "ANSI/NETA ATS/MTS", place: "Table 100.8, instantaneous trip in the field", standing: "corroborated" },
  investigateSource,
  {
    document: "NRC Information Notice 93-64",
    place: "what exercising does to late breakers",
    standing: "corroborated",
  },
  {
    document: "29 CFR 1910.333, 1910.334(b)(2)",
    place: "low voltage that burns; no closing again and again",
    standing: "corroborated",
  },
  { document: "NASA LLIS-0848", place: "discharge after an insulation test", standing: "corroborated" },
];
