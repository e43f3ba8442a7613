import { loneValues, type Source, type Standing } from "../metrology/source";
import { classInWords } from "./characteristic";

// UL 489 = CSA C22.2 No. 5 = NMX-J-266-ANCE, moulded-case circuit breakers: calibration limits of 7.1.2.
// The numbers of its tables have not been seen.

export const document = "UL 489";
const guard = "test/trip/published.test.ts";

/** °C of the air: of the trip times, and up to which the 100 % hold stands. */
export const airTemperature = { trips: 25, hold: 40 } as const;

/** Multiples of the rating: it holds until temperatures are stable; it trips within the times below. */
export const multiples = { hold: 1, ultimate: 1.35, overload: 2 } as const;

/** Longest trip time at 135 % of the rating: ratings up to `to` A. */
export const limits135Percent = [
  { to: 50, seconds: 3600 },
  { to: 6000, seconds: 7200 },
] as const;

/** Longest trip time at 200 % of the rating: ratings up to `to` A. */
export const limits200Percent: readonly {
  readonly to: number;
  readonly seconds: number;
  readonly standing: Standing;
}[] = [
  { to: 30, seconds: 120, standing: "corroborated" },
  { to: 50, seconds: 240, standing: "corroborated" },
  { to: 100, seconds: 360, standing: "corroborated" },
  { to: 150, seconds: 480, standing: "from memory" },
  { to: 225, seconds: 600, standing: "from memory" },
  { to: 400, seconds: 720, standing: "from memory" },
  { to: 600, seconds: 840, standing: "from memory" },
  { to: 800, seconds: 960, standing: "from memory" },
  { to: 1000, seconds: 1080, standing: "from memory" },
  { to: 1200, seconds: 1200, standing: "from memory" },
  { to: 1600, seconds: 1320, standing: "from memory" },
  { to: 2000, seconds: 1440, standing: "from memory" },
  { to: 2500, seconds: 1560, standing: "from memory" },
  { to: 5000, seconds: 1680, standing: "from memory" },
  { to: 6000, seconds: 1800, standing: "from memory" },
];

/** The adjustable magnetic release as multiples of its setting; no time is printed. */
export const magneticBand = { lower: 0.8, upper: 1.3 } as const;

export const holdSource: Source = {
  document,
  place: `7.1.2, 100 % calibration at ${airTemperature.hold} °C`,
  standing: "corroborated",
  tables: [
    {
      title: "Hold, and the temperatures of calibration",
      columns: loneValues,
      rows: [
        ["carried until temperatures are stable", multiples.hold, "×"],
        ["air of that hold", airTemperature.hold, "°C"],
        ["air of the trip times", airTemperature.trips, "°C"],
      ],
      guard,
    },
  ],
};

export const source135Percent: Source = {
  document,
  place: "7.1.2, 135 % calibration",
  standing: "from memory",
  tables: [
    {
      title: `Longest trip times at ${multiples.ultimate} ×`,
      columns: [["rating"], ["trip within", "s"]],
      rows: limits135Percent.map(({ to, seconds }, i) => [classInWords(to, limits135Percent[i - 1]), seconds]),
      guard,
    },
  ],
};

export const source200Percent: Source = {
  document,
  place: "7.1.2, 200 % calibration",
  standing: "from memory",
  tables: [
    {
      title: `Longest trip times at ${multiples.overload} ×`,
      columns: [["rating"], ["trip within", "s"]],
      rows: limits200Percent.map(({ to, seconds }, i) => [classInWords(to, limits200Percent[i - 1]), seconds]),
      standings: limits200Percent.map(({ standing }) => standing),
      guard,
    },
  ],
};

export const magneticSource: Source = {
  document,
  place: "7.1.2, adjustable instantaneous",
  standing: "from memory",
  tables: [
    {
      title: "Magnetic trip, multiples of the marked setting",
      columns: [
        ["no trip at", "×"],
        ["trip at", "×"],
      ],
      rows: [[magneticBand.lower, magneticBand.upper]],
      guard,
    },
  ],
};

export const ul489Sources: readonly Source[] = [holdSource, source135Percent, source200Percent, magneticSource];
