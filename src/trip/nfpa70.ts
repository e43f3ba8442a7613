import type { Source } from "../metrology/source";

// NFPA 70 (National Electrical Code), article 240: overcurrent protection.

/** Standard ampere ratings of fuses and inverse-time breakers, A. Others are allowed, but these are what is made. */
export const standardRatings: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
  700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

export const standardRatingsSource: Source = {
  document: "NFPA 70",
  edition: "2023",
  place: "Table 240.6(A)",
  standing: "corroborated",
};
