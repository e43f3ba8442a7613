import { NoAnswer } from "../metrology/no-answer";
import type { Source } from "../metrology/source";

export const diversityStandards = ["IEC 61439-2", "IEC 61439-3", "CEI 23-51"] as const;

export type DiversityStandard = (typeof diversityStandards)[number];

interface DiversityTable {
  readonly source: Source;
  /** Up to so many circuits, this factor. */
  readonly rows: readonly { readonly to: number; readonly factor: number }[];
}

const rows = (factors: readonly [number, number, number, number]) =>
  [3, 5, 9, Infinity].map((to, i) => ({ to, factor: factors[i] as number }));

/** Where the maker declares none: 2 and 3, 4 and 5, 6 to 9, 10 and more circuits. */
export const diversityTables: Record<DiversityStandard, DiversityTable> = {
  "IEC 61439-2": {
    source: { document: "IEC 61439-2", edition: "2011", place: "Table 101, assumed loading", standing: "corroborated" },
    rows: rows([0.9, 0.8, 0.7, 0.6]),
  },
  "IEC 61439-3": {
    source: { document: "IEC 61439-3", edition: "2012", place: "Table 101, assumed loading", standing: "from memory" },
    rows: rows([0.8, 0.7, 0.6, 0.5]),
  },
  "CEI 23-51": {
    source: { document: "CEI 23-51", place: "contemporaneity factor k", standing: "from memory" },
    rows: rows([0.8, 0.7, 0.6, 0.5]),
  },
};

/** The rated diversity factor of a group of circuits, at most 1: a factor on the current of each. */
export const diversityFactor = (circuits: number, standard: DiversityStandard): number => {
  if (circuits < 2)
    throw new NoAnswer(
      `circuits: the table of ${standard} begins at 2; one circuit alone has no diversity, count its full current.`,
    );
  return diversityTables[standard].rows.find(({ to }) => circuits <= to)?.factor as number;
};
