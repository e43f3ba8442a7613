import type { Source } from "../metrology/source";
import { testWireTable } from "./test-wire-table";

// UL 489 and NEMA AB 4: copper of the size that the NEC's table of ampacities gives for the rating, not less than 4 ft (1.2 m)
// at each terminal. From 800 A up the rows follow from ampacities alone and are suggestions.

const metres = 1.2;

/** From this rating up the rows are suggestions. */
export const suggestedFrom = 800;
const suggestions = `; from ${suggestedFrom} A up suggestions by ampacity`;

const source: Source = {
  document: "UL 489",
  place: "test conductors, as NEMA AB 4; sizes by the NEC's table of ampacities",
  standing: "from memory",
};

/** Rating, A; size by the 60 °C and by the 75 °C column. Above 125 A there is only the latter. */
const rows: readonly {
  readonly rating: number;
  readonly at60?: string;
  readonly at75: string;
  readonly standing?: Source["standing"];
}[] = [
  { rating: 15, at60: "14 AWG", at75: "14 AWG" },
  { rating: 20, at60: "12 AWG", at75: "12 AWG" },
  { rating: 25, at60: "10 AWG", at75: "10 AWG" },
  { rating: 30, at60: "10 AWG", at75: "10 AWG" },
  { rating: 40, at60: "8 AWG", at75: "8 AWG" },
  { rating: 50, at60: "6 AWG", at75: "8 AWG" },
  { rating: 60, at60: "4 AWG", at75: "6 AWG" },
  { rating: 70, at60: "4 AWG", at75: "4 AWG" },
  { rating: 80, at60: "3 AWG", at75: "4 AWG" },
  { rating: 90, at60: "2 AWG", at75: "3 AWG" },
  { rating: 100, at60: "1 AWG", at75: "3 AWG", standing: "corroborated" },
  { rating: 125, at60: "1/0 AWG", at75: "1 AWG" },
  { rating: 150, at75: "1/0 AWG" },
  { rating: 175, at75: "2/0 AWG" },
  { rating: 200, at75: "3/0 AWG" },
  { rating: 225, at75: "4/0 AWG" },
  { rating: 250, at75: "250 kcmil", standing: "corroborated" },
  { rating: 300, at75: "350 kcmil" },
  { rating: 400, at75: "2 × 3/0 AWG", standing: "corroborated" },
  { rating: 500, at75: "2 × 250 kcmil" },
  { rating: 600, at75: "2 × 350 kcmil", standing: "corroborated" },
  { rating: 800, at75: "3 × 300 kcmil" },
  { rating: 1000, at75: "3 × 400 kcmil" },
  { rating: 1200, at75: "4 × 350 kcmil" },
  { rating: 1600, at75: "5 × 400 kcmil" },
  { rating: 2000, at75: "6 × 400 kcmil" },
  { rating: 2500, at75: "8 × 400 kcmil or busbars" },
];

/** For terminals not marked otherwise: the 60 °C column as far as it goes. */
export const testWire = testWireTable(
  source,
  rows.map(({ rating, at60, at75, standing }) => ({ upTo: rating, size: at60 ?? at75, metres, standing })),
  suggestions,
);

/** For terminals marked 75 °C. */
export const testWire75 = testWireTable(
  source,
  rows.map(({ rating, at75, standing }) => ({ upTo: rating, size: at75, metres, standing })),
  ` for terminals marked 75 °C${suggestions}`,
);
