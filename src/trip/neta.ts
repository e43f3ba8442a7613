import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import type { Source } from "../metrology/source";

// ANSI/NETA ATS and MTS, table 100.7 (derived from NEMA AB 4): inverse-time trip test at 300 % of the rated continuous current.

/** The field test is made at this multiple of the rating. */
export const fieldMultiple = 3;

/** V: the two columns reach up to these rated voltages. */
export const voltages = { low: 250, high: 600 } as const;

/** The column of a rated voltage, in words. */
export const voltageInWords = (ratedVoltage: number): string =>
  ratedVoltage <= voltages.low ? `up to ${voltages.low} V` : `above ${voltages.low} V, up to ${voltages.high} V`;

/** Longest trip time, s, from `from` to `to` A, by the breaker's rated voltage; left out where the table has none. */
const rows: readonly {
  readonly from: number;
  readonly to: number;
  readonly to250: number | undefined;
  readonly to600: number;
}[] = [
  { from: 0, to: 30, to250: 50, to600: 70 },
  { from: 31, to: 50, to250: 80, to600: 100 },
  { from: 51, to: 100, to250: 140, to600: 160 },
  { from: 101, to: 150, to250: 200, to600: 250 },
  { from: 151, to: 225, to250: 230, to600: 275 },
  { from: 226, to: 400, to250: 300, to600: 350 },
  { from: 401, to: 600, to250: undefined, to600: 450 },
  { from: 601, to: 800, to250: undefined, to600: 500 },
  { from: 801, to: 1000, to250: undefined, to600: 600 },
  { from: 1001, to: 1200, to250: undefined, to600: 700 },
  { from: 1201, to: 1600, to250: undefined, to600: 775 },
  { from: 1601, to: 2000, to250: undefined, to600: 800 },
  { from: 2001, to: 2500, to250: undefined, to600: 850 },
  { from: 2501, to: 5000, to250: undefined, to600: 900 },
  { from: 6000, to: 6000, to250: undefined, to600: 1000 },
];

export const table1007: Source = {
  document: "ANSI/NETA ATS and MTS",
  place: "Table 100.7",
  standing: "from memory",
  tables: [
    {
      title: `Longest time to trip at ${100 * fieldMultiple} % of the rating`,
      columns: [
        ["rating from", "A"],
        ["to", "A"],
        [`breakers up to ${voltages.low} V`, "s"],
        [`above, up to ${voltages.high} V`, "s"],
      ],
      rows: rows.map(({ from, to, to250, to600 }) => [from, to, to250 ?? null, to600]),
      guard: "test/trip/published.test.ts",
    },
  ],
};

/** Longest time, s, to trip at 300 % in the field. A maximum; the table has no minimum. */
export const fieldLimit = (rating: number, ratedVoltage: number): number => {
  const at = rows.findIndex(({ to }) => rating <= to);
  const row = rows[at];
  if (!row) throw new NoAnswer(`rating: table 100.7 ends at 6000 A, so it says nothing of ${sayNumber(rating)} A.`);
  // Up to 1 A lies between one row's end and the next one's start; a wider gap is a hole in the table.
  if (rating < row.from && row.from - (rows[at - 1]?.to ?? 0) > 1)
    throw new NoAnswer(
      `rating: table 100.7 has no row between ${rows[at - 1]?.to} A and ${row.from} A, so it says nothing of ${sayNumber(rating)} A.`,
    );
  if (ratedVoltage > voltages.high)
    throw new NoAnswer(
      `rated voltage: table 100.7 ends at ${voltages.high} V, so it says nothing of ${sayNumber(ratedVoltage)} V.`,
    );
  const limit = ratedVoltage <= voltages.low ? row.to250 : row.to600;
  if (limit === undefined)
    throw new NoAnswer(
      `rating: for breakers of up to ${voltages.low} V table 100.7 ends at 400 A, so it says nothing of ${sayNumber(rating)} A.`,
    );
  return limit;
};
