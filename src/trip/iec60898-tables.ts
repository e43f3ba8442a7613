import { loneValues, type PublishedTable, type Source } from "../metrology/source";
import { classInWords } from "./characteristic";

// IEC 60898-1, circuit-breakers for overcurrent protection for household and similar installations.
// Table 7 (time-current operating characteristics), tests of 9.10.1 and 9.10.2; instantaneous ranges of table 2.

export const document = "IEC 60898-1";
const edition = "2015 + A1:2019";
const guard = "test/trip/published.test.ts";

/** A place of the document that public sources agree on. */
const corroborated = (place: string): Source => ({ document, edition, place, standing: "corroborated" });

/** The largest rated current of the document, A (clause 1). */
export const largestRating = 125;

/** Preferred rated currents, A. */
export const preferredRatings = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125] as const;

/** Reference calibration temperature, °C. */
export const calibration = 30;

/** Multiples of the rating: a holds from cold, b trips straight after it, c trips from cold. */
export const multiples = { a: 1.13, b: 1.45, c: 2.55 } as const;

/** s: the time of tests a and b by rating, and within which c trips. */
export const classes = [
  { to: 32, conventional: 3600, coldTrip: 60 },
  { to: 63, conventional: 3600, coldTrip: 120 },
  { to: largestRating, conventional: 7200, coldTrip: 120 },
] as const;

/** s: test c trips not within this. */
export const coldHold = 1;

/** Multiples of the rating at which test d holds and test e trips. */
export const instantaneous = {
  B: { lower: 3, upper: 5 },
  C: { lower: 5, upper: 10 },
  D: { lower: 10, upper: 20 },
} as const;
/** s: test d holds for this, test e trips within it. */
export const instantaneousSeconds = 0.1;

const table7Values: readonly PublishedTable[] = [
  {
    title: "Trip times of B, C and D",
    columns: [["test"], ["rating"], ["current", "×"], ["start"], ["no trip for", "s"], ["trip within", "s"]],
    rows: classes.flatMap(({ to, conventional, coldTrip }, i) => [
      ["a", classInWords(to, classes[i - 1]), multiples.a, "cold", conventional, null],
      ["b", classInWords(to, classes[i - 1]), multiples.b, "straight after a", null, conventional],
      ["c", classInWords(to, classes[i - 1]), multiples.c, "cold", coldHold, coldTrip],
    ]),
    guard,
  },
  {
    title: "Magnetic trip, tests d and e (ranges of Table 2)",
    columns: [["letter"], ["no trip at", "×"], ["trip at", "×"], ["within", "s"]],
    rows: Object.entries(instantaneous).map(([letter, { lower, upper }]) => [
      letter,
      lower,
      upper,
      instantaneousSeconds,
    ]),
    guard,
  },
];

export const table7Source: Source = { ...corroborated("Table 7"), tables: table7Values };

/** One or two tests of that table. */
export const table7 = (tests: string): Source => ({ ...corroborated(`Table 7, test ${tests}`), tables: table7Values });

export const referenceSource: Source = {
  ...corroborated("scope (clause 1) and reference calibration temperature"),
  tables: [
    {
      title: "Reference values",
      columns: loneValues,
      rows: [
        ["largest rated current", largestRating, "A"],
        ["reference calibration temperature", calibration, "°C"],
      ],
      guard,
    },
  ],
};

/** In air so many K below or above the reference: trips and holds for the conventional time at these multiples of the rating. */
const airTests = { cold: { kelvin: 35, trips: 1.9 }, warm: { kelvin: 10, holds: 1 } } as const;

/**
 * K of the strip at its trip above the reference that these tests need at least, by the square-root law: the pickup of the highest
 * sound strip comes to no more than the trip in cold air, that of the lowest to no less than the hold in warm air.
 */
export const leastTripRise = {
  cold: airTests.cold.kelvin / ((airTests.cold.trips / multiples.b) ** 2 - 1),
  warm: airTests.warm.kelvin / (1 - (airTests.warm.holds / multiples.a) ** 2),
} as const;

export const airSource: Source = {
  document,
  edition,
  place: "8.6.3.3, 9.10.3, effect of the ambient temperature",
  standing: "from memory",
  tables: [
    {
      title: "Tests in cold and in warm air",
      columns: [["air"], ["current", "×"], ["start"], ["no trip"], ["trip"]],
      rows: [
        [`${airTests.cold.kelvin} K below the reference`, multiples.a, "cold", "for the conventional time", null],
        [`${airTests.cold.kelvin} K below the reference`, airTests.cold.trips, "straight after", null, "within it"],
        [
          `${airTests.warm.kelvin} K above the reference`,
          airTests.warm.holds,
          "cold",
          "for the conventional time",
          null,
        ],
      ],
      guard,
    },
  ],
};

export const preferredSource: Source = {
  ...corroborated("5.3.2, preferred rated currents"),
  // Corroborated in part only.
  standing: "from memory",
  tables: [
    {
      title: "Preferred rated currents",
      columns: [["rating", "A"]],
      rows: preferredRatings.map((rating) => [rating]),
      guard,
    },
  ],
};
