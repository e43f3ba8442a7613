import type { Source } from "../metrology/source";
import type { Characteristic, HoldPoint, RatedClass } from "./characteristic";

// IEC 60947-2, low-voltage circuit-breakers. The rating is the current setting Ir of an adjustable thermal release.

const document = "IEC 60947-2";
const edition = "2016";
const source = (place: string, standing: Source["standing"] = "corroborated"): Source => ({
  document,
  edition,
  place,
  standing,
});

const hour = 3600;

/** The reference temperature is the maker's to state; 30 °C unless marked otherwise (5.2; corroborated in part, the rest from memory). */
const calibration = 30;

const ratedClass = (name: string, conventional: number, hold?: HoldPoint): RatedClass => ({
  name,
  holdMultiple: 1.05,
  holdSeconds: conventional,
  holdTest: `1.05 × for ${conventional} s from cold without tripping`,
  holdSource: source("7.2.1.2.4 b), Table 6"),
  hold,
  trips: [
    {
      multiple: 1.3,
      seconds: conventional,
      after: 1.05,
      test: `1.30 × straight after the hold at 1.05 ×, within ${conventional} s`,
      source: source("7.2.1.2.4 b), Table 6"),
    },
  ],
});

const characteristic = (name: string, hold?: HoldPoint): Characteristic => {
  const to63 = ratedClass("up to 63 A", hour, hold);
  const above = ratedClass("above 63 A", 2 * hour, hold);
  return {
    name,
    calibration,
    classOf: (rating) => (rating <= 63 ? to63 : above),
    magnetic: (_rating, setting) =>
      setting === undefined
        ? undefined
        : {
            lower: 0.8 * setting,
            upper: 1.2 * setting,
            seconds: 0.2,
            test: "no magnetic trip for 0.2 s at 80 % of the setting, a trip within 0.2 s at 120 %",
            source: source("7.2.1.2.4 a), 8.3.3.1.1"),
          },
    takesSetting: true,
    magneticInWords: "0.8 to 1.2 × the marked setting",
    typical: hold !== undefined,
  };
};

/** Not a limit of any standard: what a tester expects of a breaker of ordinary make. */
export const typicalHold: HoldPoint = {
  multiple: 2,
  seconds: 10,
  test: "not before 10 s at 2 × from cold",
  source: { document: "a trip before 10 s at 2 × the rating is not expected", standing: "common practice, no source" },
};

export const iec60947 = characteristic("IEC 60947-2");
export const iec60947Typical = characteristic("IEC 60947-2 typical", typicalHold);
