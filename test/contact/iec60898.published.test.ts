import { powerLossLimit, powerLossSource } from "../../src/contact/iec60898";

// The second reader's copy: IEC 60898-1, Table 15 (9.8.5), numbers from memory: above A, up to A, W per pole.
const powerLoss = [
  [0, 10, 3.0],
  [10, 16, 3.5],
  [16, 25, 4.5],
  [25, 32, 6.0],
  [32, 40, 7.5],
  [40, 50, 9.0],
  [50, 63, 13.0],
  [63, 100, 15.0],
  [100, 125, 20.0],
] as const;

test.each(powerLoss)("above %d A up to %d A a pole may lose %d W", (above, upTo, watts) => {
  expect(powerLossLimit(upTo)).toBe(watts);
  expect(powerLossLimit(above + 1e-9)).toBe(watts);
});

test("the table has these rows and no others", () => {
  expect(powerLossSource.tables?.map(({ rows }) => rows)).toEqual([powerLoss.map(([, upTo, watts]) => [upTo, watts])]);
});
