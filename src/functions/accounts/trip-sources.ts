import type { Source } from "../../metrology/source";
import { thermalEquation } from "../../thermal/model";
import { ambientLaw } from "./trip-range";

/** The documents behind every answer about tripping; an explanation names the places it used. */
export const documents: readonly Source[] = [
  { document: "IEC 60898-1", edition: "2015 + A1:2019", place: "Table 7", standing: "corroborated" },
  { document: "IEC 60947-2", edition: "2016", place: "7.2.1.2.4, Table 6", standing: "corroborated" },
  { document: "UL 489", place: "7.1.2, calibration", standing: "corroborated" },
  thermalEquation,
  ambientLaw,
];
