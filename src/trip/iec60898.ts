import { NoAnswer } from "../metrology/no-answer";
import { type Characteristic, classInWords, type RatedClass } from "./characteristic";
import {
  calibration,
  classes,
  coldHold,
  document,
  instantaneous,
  instantaneousSeconds,
  largestRating,
  multiples,
  table7,
} from "./iec60898-tables";

type Letter = keyof typeof instantaneous;

const ratedClass = (letter: Letter, place: number): RatedClass => {
  const { to, conventional, coldTrip } = classes[place] as (typeof classes)[number];
  const { a, b, c } = multiples;
  const { lower } = instantaneous[letter];
  return {
    name: classInWords(to, classes[place - 1]),
    holdMultiple: a,
    holdSeconds: conventional,
    holdTest: `test a: ${a} × for ${conventional} s from cold without tripping`,
    holdSource: table7("a"),
    hold: {
      multiple: c,
      seconds: coldHold,
      test: `test c: ${c} × from cold, not within ${coldHold} s`,
      source: table7("c"),
    },
    trips: [
      {
        multiple: b,
        seconds: conventional,
        after: a,
        test: `test b: ${b} × straight after test a, within ${conventional} s`,
        source: table7("b"),
      },
      { multiple: c, seconds: coldTrip, test: `test c: ${c} × from cold, within ${coldTrip} s`, source: table7("c") },
    ],
    floor: {
      multiple: lower,
      seconds: instantaneousSeconds,
      test: `test d: ${lower} × from cold, not within ${instantaneousSeconds} s`,
      source: table7("d"),
    },
  };
};

const letterCharacteristic = (letter: Letter): Characteristic => {
  const { lower, upper } = instantaneous[letter];
  const rated = classes.map(({ to }, place) => ({ to, ratedClass: ratedClass(letter, place) }));
  return {
    name: letter,
    calibration,
    classOf: (rating) => {
      const found = rated.find(({ to }) => rating <= to);
      if (found) return found.ratedClass;
      throw new NoAnswer(
        `rating: ${document} ends at ${largestRating} A, so "${letter}" has no limits for ${rating} A.`,
      );
    },
    magnetic: (rating) => ({
      lower: lower * rating,
      upper: upper * rating,
      seconds: instantaneousSeconds,
      test: `tests d and e: no magnetic trip at ${lower} ×, a trip within ${instantaneousSeconds} s at ${upper} ×`,
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
