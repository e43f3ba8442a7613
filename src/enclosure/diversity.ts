import { NoAnswer } from "../metrology/no-answer";
import type { Source } from "../metrology/source";

export const diversityStandards = ["IEC 61439-2", "IEC 61439-3", "CEI 23-51"] as const;

type DiversityStandard = (typeof diversityStandards)[number];

interface DiversityTable {
  readonly source: Source;
  /** Up to so many circuits, this factor. */
  readonly rows: readonly { readonly to: number; readonly factor: number }[];
}

/** Up to so many circuits: 2 and 3, 4 and 5, 6 to 9, 10 and more. */
const steps = [3, 5, 9, Infinity] as const;

const diversityTable = (source: Source, factors: readonly [number, number, number, number]): DiversityTable => {
  const rows = steps.map((to, i) => ({ to, factor: factors[i] as number }));
  return {
    rows,
    source: {
      ...source,
      tables: [
        {
          title: "Diversity factors",
          columns: [["circuits up to"], ["factor"]],
          rows: rows.map(({ to, factor }) => [Number.isFinite(to) ? to : "more", factor]),
          guard: "test/enclosure/diversity.test.ts",
        },
      ],
    },
  };
};

/** Where the maker declares none. */
export const diversityTables: Record<DiversityStandard, DiversityTable> = {
  "IEC 61439-2": diversityTable(
    { document: "IEC 61439-2", edition: "2011", place: "Table 101, assumed loading", standing: "corroborated" },
    [0.9, 0.8, 0.7, 0.6],
  ),
  "IEC 61439-3": diversityTable(
    { document: "IEC 61439-3", edition: "2012", place: "Table 101, assumed loading", standing: "from memory" },
    [0.8, 0.7, 0.6, 0.5],
  ),
  "CEI 23-51": diversityTable(
    { document: "CEI 23-51", place: "contemporaneity factor k", standing: "from memory" },
    [0.8, 0.7, 0.6, 0.5],
  ),
};

/** The rated diversity factor of a group of circuits, at most 1: a factor on the current of each. */
export const diversityFactor = (circuits: number, standard: DiversityStandard): number => {
  if (circuits < 2)
    throw new NoAnswer(
      `circuits: the table of ${standard} begins at 2; one circuit alone has no diversity, count its full current.`,
    );
  return diversityTables[standard].rows.find(({ to }) => circuits <= to)?.factor as number;
};
