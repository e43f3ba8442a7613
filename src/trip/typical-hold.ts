import type { HoldPoint } from "./characteristic";

const multiple = 2;
const seconds = 10;

/** Not a limit of any standard: what a tester expects of a breaker of ordinary make. */
export const typicalHold: HoldPoint = {
  multiple,
  seconds,
  test: `not before ${seconds} s at ${multiple} × from cold`,
  source: {
    document: `a trip before ${seconds} s at ${multiple} × the rating is not expected`,
    standing: "common practice, no source",
    tables: [
      {
        title: "Typical hold from cold",
        columns: [
          ["current", "×"],
          ["no trip for", "s"],
        ],
        rows: [[multiple, seconds]],
        guard: "test/trip/published.test.ts",
      },
    ],
  },
};
