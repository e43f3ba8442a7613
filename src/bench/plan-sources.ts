import { investigateSource } from "../contact/neta";
import type { Source } from "../metrology/source";
import { table1007 } from "../trip/neta";
import { nemaAb4, table1008 } from "./field-values";
import { raisedSource } from "./iec60898";
import { discharge, oneMinute } from "./insulation-test";

/** What the order of a plan and its cautions rest on, beside the document of the characteristic. */
export const planSources: readonly Source[] = [
  nemaAb4,
  { document: "TM 5-683", place: "5-5 (look, operate, insulation)", standing: "corroborated" },
  table1007,
  table1008,
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
  oneMinute,
  discharge,
  raisedSource,
];
