import { type TestWireStandard, testWireTables } from "../../src/bench/test-wire";

// The second reader's copy of the test conductors. All from memory but the UL rows of 100, 250, 400 and 600 A.

const printed = (standard: TestWireStandard) =>
  testWireTables[standard].rows.map(({ upTo, size, metres }) => `${upTo} A: ${size}, ${metres} m`);

test("IEC 60898-1, Table 10: rating up to, mm², metres at each terminal", () => {
  expect(printed("IEC 60898-1")).toEqual([
    "6 A: 1 mm², 1 m",
    "13 A: 1.5 mm², 1 m",
    "20 A: 2.5 mm², 1 m",
    "25 A: 4 mm², 1 m",
    "32 A: 6 mm², 1 m",
    "50 A: 10 mm², 1 m",
    "63 A: 16 mm², 2 m",
    "80 A: 25 mm², 2 m",
    "100 A: 35 mm², 2 m",
    "125 A: 50 mm², 2 m",
  ]);
});

test("IEC 60947-1, Tables 9 to 11: test current up to, mm² or bars; 1 m up to 35 mm², 2 m above", () => {
  expect(printed("IEC 60947-2")).toEqual([
    "8 A: 1 mm², 1 m",
    "12 A: 1.5 mm², 1 m",
    "20 A: 2.5 mm², 1 m",
    "25 A: 4 mm², 1 m",
    "32 A: 6 mm², 1 m",
    "50 A: 10 mm², 1 m",
    "65 A: 16 mm², 1 m",
    "85 A: 25 mm², 1 m",
    "115 A: 35 mm², 1 m",
    "150 A: 50 mm², 2 m",
    "175 A: 70 mm², 2 m",
    "225 A: 95 mm², 2 m",
    "250 A: 120 mm², 2 m",
    "275 A: 150 mm², 2 m",
    "350 A: 185 mm², 2 m",
    "400 A: 240 mm², 2 m",
    "500 A: 2 × 150 mm² or 2 bars of 30 × 5 mm, 2 m",
    "630 A: 2 × 185 mm² or 2 bars of 40 × 5 mm, 2 m",
    "800 A: 2 × 240 mm² or 2 bars of 50 × 5 mm, 2 m",
    "1000 A: 2 bars of 60 × 5 mm, 2 m",
    "1250 A: 2 bars of 80 × 5 mm, 2 m",
    "1600 A: 2 bars of 100 × 5 mm, 2 m",
    "2000 A: 3 bars of 100 × 5 mm, 2 m",
    "2500 A: 4 bars of 100 × 5 mm, 2 m",
  ]);
});

/** Rating, size by the 60 °C column ("" where it ends), by the 75 °C column. */
const ulRows: readonly (readonly [number, string, string])[] = [
  [15, "14", "14"],
  [20, "12", "12"],
  [25, "10", "10"],
  [30, "10", "10"],
  [40, "8", "8"],
  [50, "6", "8"],
  [60, "4", "6"],
  [70, "4", "4"],
  [80, "3", "4"],
  [90, "2", "3"],
  [100, "1", "3"],
  [125, "1/0", "1"],
  [150, "", "1/0"],
  [175, "", "2/0"],
  [200, "", "3/0"],
  [225, "", "4/0"],
];
const ulThick = [
  "250 A: 250 kcmil, 1.2 m",
  "300 A: 350 kcmil, 1.2 m",
  "400 A: 2 × 3/0 AWG, 1.2 m",
  "500 A: 2 × 250 kcmil, 1.2 m",
  "600 A: 2 × 350 kcmil, 1.2 m",
  "800 A: 3 × 300 kcmil, 1.2 m",
  "1000 A: 3 × 400 kcmil, 1.2 m",
  "1200 A: 4 × 350 kcmil, 1.2 m",
  "1600 A: 5 × 400 kcmil, 1.2 m",
  "2000 A: 6 × 400 kcmil, 1.2 m",
  "2500 A: 8 × 400 kcmil or busbars, 1.2 m",
];

test("UL 489 and NEMA AB 4: not less than 4 ft, the 60 °C column as far as it goes", () => {
  expect(printed("UL 489")).toEqual([
    ...ulRows.map(([rating, at60, at75]) => `${rating} A: ${at60 || at75} AWG, 1.2 m`),
    ...ulThick,
  ]);
});

test("the same for terminals marked 75 °C", () => {
  expect(printed("UL 489 75 °C")).toEqual([
    ...ulRows.map(([rating, , at75]) => `${rating} A: ${at75} AWG, 1.2 m`),
    ...ulThick,
  ]);
});

test("what stands otherwise than from memory", () => {
  const corroborated = testWireTables["UL 489"].rows.filter(({ standing }) => standing === "corroborated");
  expect(corroborated.map(({ upTo }) => upTo)).toEqual([100, 250, 400, 600]);
  for (const { source } of Object.values(testWireTables)) expect(source.standing).toBe("from memory");
});
