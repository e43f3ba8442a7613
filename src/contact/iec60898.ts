import { NoAnswer } from "../metrology/no-answer";
import type { Source } from "../metrology/source";
import { terminalRiseLimit } from "./terminal-rise";

// IEC 60898-1, circuit-breakers for overcurrent protection for household and similar installations:
// what it says of heat in the poles and at the terminals.

const document = "IEC 60898-1";

/** Largest power loss of one pole at the rated current, warm and settled. */
const powerLoss = [
  { upTo: 10, watts: 3 },
  { upTo: 16, watts: 3.5 },
  { upTo: 25, watts: 4.5 },
  { upTo: 32, watts: 6 },
  { upTo: 40, watts: 7.5 },
  { upTo: 50, watts: 9 },
  { upTo: 63, watts: 13 },
  { upTo: 100, watts: 15 },
  { upTo: 125, watts: 20 },
] as const;

export const powerLossSource: Source = {
  document,
  place: "Table 15 (9.8.5)",
  standing: "from memory",
  tables: [
    {
      title: "Largest power loss of one pole at the rating",
      columns: [
        ["rating up to", "A"],
        ["loss", "W"],
      ],
      rows: powerLoss.map(({ upTo, watts }) => [upTo, watts]),
      guard: "test/contact/iec60898.published.test.ts",
    },
  ],
};

/** W per pole that IEC 60898-1 allows at `rating` A. Throws NoAnswer above 125 A, where the document ends. */
export const powerLossLimit = (rating: number): number => {
  const row = powerLoss.find(({ upTo }) => rating <= upTo);
  if (!row) throw new NoAnswer(`rating: ${document} ends at 125 A, so it has no power-loss limit for ${rating} A.`);
  return row.watts;
};

/** K above the room that a terminal may reach at the rated current, settled. */
export const terminalRise = terminalRiseLimit(60, {
  document,
  place: "Table 6, terminals for external connections",
  standing: "corroborated",
});
