import { loneValues, type Source } from "../metrology/source";
import { type Characteristic, classInWords, type HoldPoint, type RatedClass } from "./characteristic";
import { typicalHold } from "./typical-hold";

// IEC 60947-2, low-voltage circuit-breakers. The rating is the current setting Ir of an adjustable thermal release.

const document = "IEC 60947-2";
const edition = "2016";
const guard = "test/trip/published.test.ts";

/** The reference temperature, °C, is the maker's to state; this one where none is marked. */
const calibration = 30;

/** Multiples of the rating: it holds from cold, then trips straight after. */
const multiples = { hold: 1.05, trip: 1.3 } as const;

/** The conventional time, s, changes above this rating, A. */
const shortUpTo = 63;
const conventionalTime = { short: 3600, long: 7200 } as const;

/** The magnetic release as multiples of its setting, and the time of both tests, s. */
const magneticBand = { lower: 0.8, upper: 1.2, seconds: 0.2 } as const;

const thermalSource: Source = {
  document,
  edition,
  place: "7.2.1.2.4 b), Table 6",
  standing: "corroborated",
  tables: [
    {
      title: "Trip times",
      columns: [["rating"], ["current", "×"], ["start"], ["no trip for", "s"], ["trip within", "s"]],
      rows: [
        [classInWords(shortUpTo), multiples.hold, "cold", conventionalTime.short, null],
        [classInWords(shortUpTo), multiples.trip, "straight after", null, conventionalTime.short],
        [`above ${shortUpTo} A`, multiples.hold, "cold", conventionalTime.long, null],
        [`above ${shortUpTo} A`, multiples.trip, "straight after", null, conventionalTime.long],
      ],
      guard,
    },
  ],
};

export const iec60947Magnetic: Source = {
  document,
  edition,
  place: "7.2.1.2.4 a), 8.3.3.1.1",
  standing: "corroborated",
  tables: [
    {
      title: "Magnetic trip, multiples of the marked setting",
      columns: [
        ["no trip at", "×"],
        ["trip at", "×"],
        ["within", "s"],
      ],
      rows: [[magneticBand.lower, magneticBand.upper, magneticBand.seconds]],
      guard,
    },
  ],
};

export const iec60947Reference: Source = {
  document,
  edition,
  place: "5.2, reference temperature where none is marked",
  // Corroborated in part only.
  standing: "from memory",
  tables: [
    {
      title: "Reference temperature",
      columns: loneValues,
      rows: [["reference temperature where none is marked", calibration, "°C"]],
      guard,
    },
  ],
};

export const iec60947Sources: readonly Source[] = [thermalSource, iec60947Magnetic, iec60947Reference];

const ratedClass = (name: string, conventional: number, hold?: HoldPoint): RatedClass => ({
  name,
  holdMultiple: multiples.hold,
  holdSeconds: conventional,
  holdTest: `${multiples.hold} × for ${conventional} s from cold without tripping`,
  holdSource: thermalSource,
  hold,
  trips: [
    {
      multiple: multiples.trip,
      seconds: conventional,
      after: multiples.hold,
      test: `${multiples.trip.toFixed(2)} × straight after the hold at ${multiples.hold} ×, within ${conventional} s`,
      source: thermalSource,
    },
  ],
});

const characteristic = (name: string, hold?: HoldPoint): Characteristic => {
  const upTo63 = ratedClass(classInWords(shortUpTo), conventionalTime.short, hold);
  const above63 = ratedClass(`above ${shortUpTo} A`, conventionalTime.long, hold);
  const { lower, upper, seconds } = magneticBand;
  return {
    name,
    calibration,
    classOf: (rating) => (rating <= shortUpTo ? upTo63 : above63),
    magnetic: (_rating, setting) =>
      setting === undefined
        ? undefined
        : {
            lower: lower * setting,
            upper: upper * setting,
            seconds,
            test: `no magnetic trip for ${seconds} s at ${100 * lower} % of the setting, a trip within ${seconds} s at ${100 * upper} %`,
            source: iec60947Magnetic,
          },
    takesSetting: true,
    magneticInWords: `${lower} to ${upper} × the marked setting`,
    typical: hold !== undefined,
  };
};

export const iec60947 = characteristic("IEC 60947-2");
export const iec60947Typical = characteristic("IEC 60947-2 typical", typicalHold);
