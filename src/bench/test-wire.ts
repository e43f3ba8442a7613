import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import * as iec60898 from "./iec60898";
import * as iec60947 from "./iec60947";
import type { TestWire, TestWireTable } from "./test-wire-table";
import * as ul489 from "./ul489";

/** The tables of test conductors by the name a sheet asks for. */
export const testWireTables = {
  "IEC 60898-1": iec60898.testWire,
  "IEC 60947-2": iec60947.testWire,
  "UL 489": ul489.testWire,
  "UL 489 75 °C": ul489.testWire75,
} as const satisfies Record<string, TestWireTable>;

export type TestWireStandard = keyof typeof testWireTables;

/** The first row that reaches the rating, A: a rating between two rows takes the thicker wire; undefined beyond the table. */
export const testWireRow = (standard: TestWireStandard, rating: number): TestWire | undefined =>
  testWireTables[standard].rows.find(({ upTo }) => rating <= upTo);

/** The same, where beyond the table is no answer: throws NoAnswer. */
export const testWire = (standard: TestWireStandard, rating: number): TestWire => {
  const row = testWireRow(standard, rating);
  if (row) return row;
  const { rows, source }: TestWireTable = testWireTables[standard];
  throw new NoAnswer(
    `rating: the test conductors of ${source.document} end at ${rows.at(-1)?.upTo} A, so there are none for ${sayNumber(rating)} A.`,
  );
};
