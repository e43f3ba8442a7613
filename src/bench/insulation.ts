import { exceeds } from "../metrology/exceeds";
import type { Source } from "../metrology/source";

/** What one document asks of the insulation of a breaker, by the class it sorts it into. */
export interface InsulationClass {
  /** V, direct current, of the test. */
  readonly testVolts: number;
  /** MΩ, the least that passes. */
  readonly least: number;
  /** What a lower reading calls for. */
  readonly below: "investigate" | "reject";
  readonly source: Source;
}

const neta = (standing: Source["standing"]): Source => ({
  document: "ANSI/NETA ATS and MTS",
  place: "Table 100.1, at 20 °C after 1 min",
  standing,
});
const ab4: Source = { document: "NEMA AB 4", place: "5.3, 6.3", standing: "from memory" };
const tm5683: Source = {
  document: "TM 5-683",
  place: "5-5 (1 MΩ per kV of test voltage)",
  standing: "corroborated",
};

/** The documents differ a hundredfold, so a sheet names one: their numbers are never mixed. */
export const insulationClasses = {
  "NETA 250 V": { testVolts: 500, least: 25, below: "investigate", source: neta("from memory") },
  // Corroborated in part, the rest from memory.
  "NETA 600 V": { testVolts: 1000, least: 100, below: "investigate", source: neta("from memory") },
  "NETA 1000 V": { testVolts: 1000, least: 100, below: "investigate", source: neta("from memory") },
  "NEMA AB 4": { testVolts: 500, least: 1, below: "reject", source: ab4 },
  "TM 5-683 500 V": { testVolts: 500, least: 0.5, below: "reject", source: tm5683 },
  "TM 5-683 1000 V": { testVolts: 1000, least: 1, below: "reject", source: tm5683 },
} as const satisfies Record<string, InsulationClass>;

export type InsulationClassName = keyof typeof insulationClasses;

/** A reading, MΩ, against its class; one that equals the least passes. */
export const insulationFinding = (
  megohms: number,
  { least, below }: InsulationClass,
): "meets" | "investigate" | "reject" => (exceeds(least, megohms) ? below : "meets");
