import { exceeds } from "../metrology/exceeds";
import type { Source } from "../metrology/source";

/** What one document asks of the insulation of a breaker, by the class it sorts it into. */
interface InsulationClass {
  /** V, direct current, of the test. */
  readonly testVolts: number;
  /** MΩ, the least that passes. */
  readonly least: number;
  /** What a lower reading calls for. */
  readonly below: "investigate" | "reject";
  readonly source: Source;
}

type Asked = Pick<InsulationClass, "testVolts" | "least">;

/** The classes of one document, with their source. */
const judgedBy = <Name extends string>(
  source: Source,
  below: InsulationClass["below"],
  classes: Record<Name, Asked>,
): Record<Name, InsulationClass> => {
  const entries = Object.entries<Asked>(classes);
  const withTable: Source = {
    ...source,
    tables: [
      {
        title: "Least insulation resistance",
        columns: [["class"], ["test voltage, d.c.", "V"], ["at least", "MΩ"], ["else"]],
        rows: entries.map(([name, { testVolts, least }]) => [name, testVolts, least, below]),
        guard: "test/bench/insulation.test.ts",
      },
    ],
  };
  return Object.fromEntries(entries.map(([name, asked]) => [name, { ...asked, below, source: withTable }])) as Record<
    Name,
    InsulationClass
  >;
};

/** The documents differ a hundredfold, so a sheet names one: their numbers are never mixed. */
export const insulationClasses = {
  ...judgedBy(
    // That of 600 V corroborated in part.
    { document: "ANSI/NETA ATS and MTS", place: "Table 100.1, at 20 °C after 1 min", standing: "from memory" },
    "investigate",
    {
      "NETA 250 V": { testVolts: 500, least: 25 },
      "NETA 600 V": { testVolts: 1000, least: 100 },
      "NETA 1000 V": { testVolts: 1000, least: 100 },
    },
  ),
  ...judgedBy({ document: "IEC 60898-1", place: "9.7.2, after damp heat", standing: "from memory" }, "reject", {
    "IEC 60898-1 poles": { testVolts: 500, least: 2 },
    "IEC 60898-1 frame": { testVolts: 500, least: 5 },
  }),
  ...judgedBy({ document: "NEMA AB 4", place: "5.3, 6.3", standing: "from memory" }, "reject", {
    "NEMA AB 4": { testVolts: 500, least: 1 },
  }),
  ...judgedBy(
    { document: "TM 5-683", place: "5-5 (1 MΩ per kV of test voltage)", standing: "corroborated" },
    "reject",
    {
      "TM 5-683 500 V": { testVolts: 500, least: 0.5 },
      "TM 5-683 1000 V": { testVolts: 1000, least: 1 },
    },
  ),
} as const;

export type InsulationClassName = keyof typeof insulationClasses;

/** A reading, MΩ, against its class; one that equals the least passes. */
export const insulationFinding = (
  megohms: number,
  { least, below }: InsulationClass,
): "meets" | "investigate" | "reject" => (exceeds(least, megohms) ? below : "meets");
