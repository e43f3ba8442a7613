import { loneValues, type Source } from "../metrology/source";

// NFPA 70 (National Electrical Code): overcurrent protection.

const from = (place: string): Source => ({ document: "NFPA 70", edition: "2023", place, standing: "corroborated" });

const guard = "test/trip/nfpa70.published.test.ts";

/** Standard ampere ratings of fuses and inverse-time breakers, A. Others are allowed, but these are what is made. */
export const standardRatings: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
  700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** The edition of 2023 lists this one besides, A. */
export const addedIn2023 = 10;

export const standardRatingsSource: Source = {
  ...from(`Table 240.6(A); that of 2023 begins at ${addedIn2023} A`),
  edition: "2020",
  tables: [
    {
      title: "Standard ampere ratings",
      columns: [["rating", "A"]],
      rows: standardRatings.map((rating) => [rating]),
      guard,
    },
    {
      title: "Standard ampere rating added in 2023",
      columns: [["rating", "A"]],
      rows: [[addedIn2023]],
      guard,
    },
  ],
};

/** The rating of a breaker not listed for 100 % is at least the load that is not continuous and this times the continuous one (three hours and longer). */
export const continuousFactor = 1.25;

export const continuousSource: Source = {
  ...from("210.20(A), 215.3"),
  tables: [
    {
      title: "Continuous load",
      columns: loneValues,
      rows: [["rating ÷ continuous load, at least, unless listed for 100 %", continuousFactor, "×"]],
      guard,
    },
  ],
};
