import { NoAnswer } from "../metrology/no-answer";
import type { Source } from "../metrology/source";
import type { Characteristic, RatedClass } from "./characteristic";

// IEC 60898-1, circuit-breakers for overcurrent protection for household and similar installations.
// Table 7 (time-current operating characteristics), tests of 9.10.1 and 9.10.2; instantaneous ranges of table 2.

const document = "IEC 60898-1";
const edition = "2015 + A1:2019";
const table7 = (tests: string): Source => ({
  document,
  edition,
  place: `Table 7, test ${tests}`,
  standing: "corroborated",
});

/** The largest rated current of the document, A (clause 1). */
export const largestRating = 125;

/** Preferred rated currents, A (5.3.2; corroborated in part, the rest from memory). */
export const preferredRatings = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125] as const;

/** Reference calibration temperature, °C. */
const calibration = 30;

const instantaneous = { B: { lower: 3, upper: 5 }, C: { lower: 5, upper: 10 }, D: { lower: 10, upper: 20 } } as const;

const ratedClass = (letter: Letter, name: string, conventional: number, coldTrip: number): RatedClass => ({
  name,
  holdMultiple: 1.13,
  holdSeconds: conventional,
  holdTest: `test a: 1.13 × for ${conventional} s from cold without tripping`,
  holdSource: table7("a"),
  hold: { multiple: 2.55, seconds: 1, test: "test c: 2.55 × from cold, not within 1 s", source: table7("c") },
  trips: [
    {
      multiple: 1.45,
      seconds: conventional,
      after: 1.13,
      test: `test b: 1.45 × straight after test a, within ${conventional} s`,
      source: table7("b"),
    },
    { multiple: 2.55, seconds: coldTrip, test: `test c: 2.55 × from cold, within ${coldTrip} s`, source: table7("c") },
  ],
  floor: {
    multiple: instantaneous[letter].lower,
    seconds: 0.1,
    test: `test d: ${instantaneous[letter].lower} × from cold, not within 0.1 s`,
    source: table7("d"),
  },
});

type Letter = keyof typeof instantaneous;

const letterCharacteristic = (letter: Letter): Characteristic => {
  const { lower, upper } = instantaneous[letter];
  const to32 = ratedClass(letter, "up to 32 A", 3600, 60);
  const to63 = ratedClass(letter, "above 32 A up to 63 A", 3600, 120);
  const to125 = ratedClass(letter, "above 63 A up to 125 A", 7200, 120);
  return {
    name: letter,
    calibration,
    classOf: (rating) => {
      if (rating <= 32) return to32;
      if (rating <= 63) return to63;
      if (rating <= largestRating) return to125;
      throw new NoAnswer(
        `rating: ${document} ends at ${largestRating} A, so "${letter}" has no limits for ${rating} A.`,
      );
    },
    magnetic: (rating) => ({
      lower: lower * rating,
      upper: upper * rating,
      seconds: 0.1,
      test: `tests d and e: no magnetic trip at ${lower} ×, a trip within 0.1 s at ${upper} ×`,
      source: table7("d and e"),
    }),
    takesSetting: false,
    magneticInWords: `above ${lower} × up to ${upper} × the rating`,
    typical: false,
  };
};

export const iec60898 = {
  B: letterCharacteristic("B"),
  C: letterCharacteristic("C"),
  D: letterCharacteristic("D"),
} as const;
