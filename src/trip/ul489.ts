import { NoAnswer } from "../metrology/no-answer";
import { type Characteristic, classInWords, type HoldPoint, type RatedClass } from "./characteristic";
import { typicalHold } from "./typical-hold";
import {
  airTemperature,
  document,
  holdSource,
  limits135Percent,
  limits200Percent,
  magneticBand,
  magneticSource,
  multiples,
  source135Percent,
  source200Percent,
} from "./ul489-tables";

const largest = limits200Percent.at(-1)?.to ?? 0;

const seconds135Percent = (to: number): number => limits135Percent.find((row) => to <= row.to)?.seconds as number;

const trips = (multiple: number, seconds: number): string =>
  `${100 * multiple} % at ${airTemperature.trips} °C from cold (from memory), within ${seconds} s`;

const ratedClass = (place: number, hold?: HoldPoint): RatedClass => {
  const row = limits200Percent[place] as (typeof limits200Percent)[number];
  const ultimate = seconds135Percent(row.to);
  return {
    name: classInWords(row.to, limits200Percent[place - 1]),
    holdMultiple: multiples.hold,
    holdTest: `${multiples.hold.toFixed(2)} × at ${airTemperature.hold} °C without tripping until temperatures are stable`,
    holdSource,
    hold,
    trips: [
      {
        multiple: multiples.ultimate,
        seconds: ultimate,
        test: trips(multiples.ultimate, ultimate),
        source: source135Percent,
      },
      {
        multiple: multiples.overload,
        seconds: row.seconds,
        test: trips(multiples.overload, row.seconds),
        source: { ...source200Percent, standing: row.standing },
      },
    ],
  };
};

const characteristic = (name: string, hold?: HoldPoint): Characteristic => {
  const classes = limits200Percent.map(({ to }, place) => ({ to, ratedClass: ratedClass(place, hold) }));
  const { lower, upper } = magneticBand;
  return {
    name,
    calibration: airTemperature.trips,
    holdCalibration: airTemperature.hold,
    classOf: (rating) => {
      const found = classes.find(({ to }) => rating <= to);
      if (found) return found.ratedClass;
      throw new NoAnswer(
        `rating: the 200 % limits of ${document} end at ${largest} A, so there are none for ${rating} A.`,
      );
    },
    magnetic: (_rating, setting) =>
      setting === undefined
        ? undefined
        : {
            lower: lower * setting,
            upper: upper * setting,
            test: `adjustable magnetic release: ${100 * lower} % to ${100 * upper} % of the marked setting, no time printed`,
            source: magneticSource,
          },
    takesSetting: true,
    magneticInWords: `${lower} to ${upper} × the marked setting`,
    typical: hold !== undefined,
  };
};

export const ul489 = characteristic("UL 489");
export const ul489Typical = characteristic("UL 489 typical", typicalHold);
