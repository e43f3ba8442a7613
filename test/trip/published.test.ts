import { usualTripRise } from "../../src/trip/ambient";
import { iec60898 } from "../../src/trip/iec60898";
import { airSource, largestRating, leastTripRise, preferredRatings } from "../../src/trip/iec60898-tables";
import { iec60947, iec60947Typical } from "../../src/trip/iec60947";
import { fieldLimit, fieldMultiple, table1007 } from "../../src/trip/neta";
import { ul489, ul489Typical } from "../../src/trip/ul489";
import { limits135Percent, limits200Percent } from "../../src/trip/ul489-tables";

// The second reader's copy of the published tables, typed apart from src. A difference means that one of the two readers slipped.

test("IEC 60898-1, Table 7: tests a, b and c by rating (corroborated)", () => {
  const typed = [
    // rating, conventional time (a: hold at 1.13, b: trip at 1.45), c: 2.55 × not within, within
    [6, 3600, 1, 60],
    [32, 3600, 1, 60],
    [33, 3600, 1, 120],
    [63, 3600, 1, 120],
    [64, 7200, 1, 120],
    [125, 7200, 1, 120],
  ] as const;
  const names = (rating: number) =>
    rating <= 32 ? "up to 32 A" : rating <= 63 ? "above 32 A up to 63 A" : "above 63 A up to 125 A";
  for (const [rating, conventional, notWithin, within] of typed) {
    const { name, holdMultiple, holdSeconds, hold, trips } = iec60898.C.classOf(rating);
    expect(name).toBe(names(rating));
    expect([holdMultiple, holdSeconds]).toEqual([1.13, conventional]);
    expect([hold?.multiple, hold?.seconds]).toEqual([2.55, notWithin]);
    expect(trips.map(({ multiple, seconds, after }) => [multiple, seconds, after])).toEqual([
      [1.45, conventional, 1.13],
      [2.55, within, undefined],
    ]);
  }
});

test("IEC 60898-1, Table 7 tests d and e, and the instantaneous ranges: B 3 to 5, C 5 to 10, D 10 to 20 (corroborated)", () => {
  for (const [letter, lower, upper] of [
    ["B", 3, 5],
    ["C", 5, 10],
    ["D", 10, 20],
  ] as const) {
    expect(iec60898[letter].magnetic(10, undefined)).toMatchObject({
      lower: 10 * lower,
      upper: 10 * upper,
      seconds: 0.1,
    });
    expect(iec60898[letter].classOf(10).floor).toMatchObject({ multiple: lower, seconds: 0.1 });
    expect(iec60898[letter].calibration).toBe(30);
  }
});

test("IEC 60898-1 ends at 125 A (clause 1, corroborated)", () => {
  expect(largestRating).toBe(125);
});

test("IEC 60898-1, other air (from memory): 35 K below, 1.13 × holds, then 1.9 × trips; 10 K above, 1 × holds", () => {
  expect(airSource.tables?.[0]?.rows).toEqual([
    ["35 K below the reference", 1.13, "cold", "for the conventional time", null],
    ["35 K below the reference", 1.9, "straight after", null, "within it"],
    ["10 K above the reference", 1, "cold", "for the conventional time", null],
  ]);
  // By hand: 1.45·√(1 + 35/R) ≤ 1.9 from R = 48.81 K on, 1.13·√(1 − 10/R) ≥ 1 from R = 46.11 K on.
  expect(leastTripRise.cold).toBeCloseTo(48.81, 2);
  expect(leastTripRise.warm).toBeCloseTo(46.11, 2);
});

test("IEC 60898-1, preferred rated currents (corroborated in part)", () => {
  expect(preferredRatings).toEqual([6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125]);
});

test("IEC 60947-2, Table 6 and 7.2.1.2.4: 1.05 and 1.30 × for 1 h up to 63 A, 2 h above; ±20 % of the setting within 0.2 s", () => {
  for (const [rating, conventional] of [
    [63, 3600],
    [64, 7200],
  ] as const) {
    const { holdMultiple, holdSeconds, trips } = iec60947.classOf(rating);
    expect([holdMultiple, holdSeconds]).toEqual([1.05, conventional]);
    expect(trips.map(({ multiple, seconds, after }) => [multiple, seconds, after])).toEqual([
      [1.3, conventional, 1.05],
    ]);
  }
  expect(iec60947.magnetic(20, 100)).toMatchObject({ lower: 80, upper: 120, seconds: 0.2 });
  expect(iec60947.calibration).toBe(30);
});

test("UL 489, 200 % at 25 °C: minutes by rating (to 100 A corroborated, above from memory)", () => {
  const typed: Record<number, number> = {
    30: 2,
    50: 4,
    100: 6,
    150: 8,
    225: 10,
    400: 12,
    600: 14,
    800: 16,
    1000: 18,
    1200: 20,
    1600: 22,
    2000: 24,
    2500: 26,
    5000: 28,
    6000: 30,
  };
  expect(limits200Percent.map(({ to, seconds }) => [to, seconds / 60])).toEqual(
    Object.entries(typed).map(([to, minutes]) => [Number(to), minutes]),
  );
  expect(ul489.classOf(20).trips.map(({ multiple, seconds }) => [multiple, seconds])).toContainEqual([2, 120]);
  for (const { to, standing } of limits200Percent) expect(standing).toBe(to <= 100 ? "corroborated" : "from memory");
});

test("UL 489, 135 % at 25 °C: 1 h up to 50 A, 2 h above; 100 % at 40 °C; setting −20 % to +30 % (from memory)", () => {
  const seconds = (rating: number) => ul489.classOf(rating).trips.find(({ multiple }) => multiple === 1.35)?.seconds;
  expect([seconds(15), seconds(50), seconds(51), seconds(400)]).toEqual([3600, 3600, 7200, 7200]);
  expect(limits135Percent.map(({ to, seconds }) => [to, seconds])).toEqual([
    [50, 3600],
    [6000, 7200],
  ]);
  expect([ul489.classOf(20).holdMultiple, ul489.holdCalibration, ul489.calibration]).toEqual([1, 40, 25]);
  expect(ul489.magnetic(20, 100)).toMatchObject({ lower: 80, upper: 130 });
  expect(ul489.magnetic(20, 100)?.seconds).toBeUndefined();
});

test("a rating between two printed rows takes the next row once the lower one has ended", () => {
  expect(ul489.classOf(30).name).toBe("up to 30 A");
  expect(ul489.classOf(30.5).name).toBe("above 30 A up to 50 A");
});

test("common practice: a trip before 10 s at 2 × the rating is not expected; a strip trips 80 K above its calibration", () => {
  for (const { classOf } of [iec60947Typical, ul489Typical]) {
    expect(classOf(20).hold).toMatchObject({ multiple: 2, seconds: 10 });
    expect(classOf(20).hold?.source).toEqual(expect.objectContaining({ standing: "common practice, no source" }));
  }
  // The square-root law of the air temperature.
  expect(usualTripRise).toBe(80);
});

test("ANSI/NETA ATS and MTS, table 100.7, 300 %: seconds by rating, up to 250 V and 251 to 600 V (from memory)", () => {
  // from, to, up to 250 V, 251 to 600 V
  const typed = [
    [0, 30, 50, 70],
    [31, 50, 80, 100],
    [51, 100, 140, 160],
    [101, 150, 200, 250],
    [151, 225, 230, 275],
    [226, 400, 300, 350],
    [401, 600, null, 450],
    [601, 800, null, 500],
    [801, 1000, null, 600],
    [1001, 1200, null, 700],
    [1201, 1600, null, 775],
    [1601, 2000, null, 800],
    [2001, 2500, null, 850],
    [2501, 5000, null, 900],
    [6000, 6000, null, 1000],
  ] as const;
  expect(fieldMultiple).toBe(3);
  expect(table1007.tables?.map(({ rows }) => rows)).toEqual([typed]);
  for (const [, rating, to250, to600] of typed) {
    expect(fieldLimit(rating, 480)).toBe(to600);
    if (to250 === null)
      expect(() => fieldLimit(rating, 240)).toThrow("for breakers of up to 250 V table 100.7 ends at 400 A");
    else expect(fieldLimit(rating, 240)).toBe(to250);
  }
  expect(fieldLimit(30.5, 240)).toBe(80);
  expect(() => fieldLimit(5500, 480)).toThrow(
    "rating: table 100.7 has no row between 5000 A and 6000 A, so it says nothing of 5500 A.",
  );
  expect(() => fieldLimit(7000, 480)).toThrow("table 100.7 ends at 6000 A");
  expect([100, 250, 250.1, 600].map((volts) => fieldLimit(30, volts))).toEqual([50, 50, 70, 70]);
  for (const volts of [600.1, 690]) expect(() => fieldLimit(30, volts)).toThrow("table 100.7 ends at 600 V");
});
