import { addedIn2023, continuousFactor, standardRatings } from "../../src/trip/nfpa70";

// The second reader's copy: NFPA 70 (2020), Table 240.6(A), standard ampere ratings; the edition of 2023 has 10 A besides.
test("Table 240.6(A) has these ratings and no others", () => {
  // biome-ignore format: as printed
  expect(standardRatings).toEqual([
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70,
    80, 90, 100, 110, 125, 150, 175, 200, 225, 250,
    300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200,
    1600, 2000, 2500, 3000, 4000, 5000, 6000,
  ]);
  expect(addedIn2023).toBe(10);
});

// NFPA 70 (2023), 210.20(A) and 215.3: not less than the noncontinuous load plus 125 % of the continuous load.
test("a continuous load takes 125 % of itself", () => {
  expect(continuousFactor).toBe(1.25);
});
