import { NoAnswer } from "../metrology/no-answer";
import type { Source } from "../metrology/source";
import type { Characteristic, HoldPoint, RatedClass } from "./characteristic";
import { typicalHold } from "./iec60947";

// UL 489 = CSA C22.2 No. 5 = NMX-J-266-ANCE, moulded-case circuit breakers: calibration limits of 7.1.2.

const document = "UL 489";
const source = (place: string, standing: Source["standing"]): Source => ({ document, place, standing });

/** Longest trip time at 200 % of the rating, 25 °C: ratings up to `to` A (7.1.2; the table's number has not been seen). */
export const limits200Percent: readonly {
  readonly to: number;
  readonly seconds: number;
  readonly standing: Source["standing"];
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

/** 135 % of the rating at 25 °C: within 1 h up to 50 A, 2 h above. */
const seconds135Percent = (to: number): number => (to <= 50 ? 3600 : 7200);

const ratedClass = (from: number, row: (typeof limits200Percent)[number], hold?: HoldPoint): RatedClass => ({
  name: from === 0 ? `up to ${row.to} A` : `above ${from} A up to ${row.to} A`,
  holdMultiple: 1,
  holdTest: "1.00 × at 40 °C without tripping until temperatures are stable",
  holdSource: source("7.1.2, 100 % calibration at 40 °C", "corroborated"),
  hold,
  trips: [
    {
      multiple: 1.35,
      seconds: seconds135Percent(row.to),
      test: `135 % at 25 °C from cold (from memory), within ${seconds135Percent(row.to)} s`,
      source: source("7.1.2, 135 % calibration", "from memory"),
    },
    {
      multiple: 2,
      seconds: row.seconds,
      test: `200 % at 25 °C from cold (from memory), within ${row.seconds} s`,
      source: source("7.1.2, 200 % calibration", row.standing),
    },
  ],
});

const characteristic = (name: string, hold?: HoldPoint): Characteristic => {
  const classes = limits200Percent.map((row, i) => ({
    to: row.to,
    ratedClass: ratedClass(limits200Percent[i - 1]?.to ?? 0, row, hold),
  }));
  return {
    name,
    calibration: 25,
    holdCalibration: 40,
    classOf: (rating) => {
      const found = classes.find(({ to }) => rating <= to);
      if (found) return found.ratedClass;
      throw new NoAnswer(`rating: the 200 % limits of ${document} end at 6000 A, so there are none for ${rating} A.`);
    },
    magnetic: (_rating, setting) =>
      setting === undefined
        ? undefined
        : {
            lower: 0.8 * setting,
            upper: 1.3 * setting,
            test: "adjustable magnetic release: 80 % to 130 % of the marked setting, no time printed",
            source: source("7.1.2, adjustable instantaneous", "from memory"),
          },
    takesSetting: true,
    magneticInWords: "0.8 to 1.3 × the marked setting",
    typical: hold !== undefined,
  };
};

export const ul489 = characteristic("UL 489");
export const ul489Typical = characteristic("UL 489 typical", typicalHold);
