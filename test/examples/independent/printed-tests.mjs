// The printed tests of each characteristic, typed here once more and not taken from src.
// IEC 60898-1:2015 + A1:2019, Table 7 (tests a to e) and table 2 (instantaneous ranges); power loss: table 15, from memory.
// UL 489 7.1.2: 200 % corroborated to 100 A, 135 % and the temperatures from memory.
// "typical": one more test, not before 10 s at 2 × from cold, which no standard prints.

const magneticBands = { B: [3, 5], C: [5, 10], D: [10, 20] };

const letter = (name) => (rating) => {
  if (rating > 125) return undefined;
  const hour = rating <= 63 ? 3600 : 7200;
  const within = rating <= 32 ? 60 : 120;
  const [lower, upper] = magneticBands[name];
  return {
    calibration: 30,
    hold: 1.13,
    holdSeconds: hour,
    tests: [
      { stages: [{ multiple: 2.55 }], notBefore: 1, printed: true },
      { stages: [{ multiple: 2.55 }], within, printed: true },
      { stages: [{ multiple: 1.13, seconds: hour }, { multiple: 1.45 }], within: hour, printed: true },
    ],
    floor: { multiple: lower, seconds: 0.1 },
    magnetic: { lower: lower * rating, upper: upper * rating, seconds: 0.1 },
  };
};

const at200Percent = [
  [30, 120],
  [50, 240],
  [100, 360],
];

const ul489 = (typical) => (rating) => {
  const row = at200Percent.find(([to]) => rating <= to);
  if (!row) return undefined;
  return {
    calibration: 25,
    // The rated current is carried in any air up to this, °C, and not moved with the air below it.
    holdsUpTo: 40,
    hold: 1,
    tests: [
      { stages: [{ multiple: 1.35 }], within: rating <= 50 ? 3600 : 7200, printed: true },
      { stages: [{ multiple: 2 }], within: row[1], printed: true },
      ...(typical ? [{ stages: [{ multiple: 2 }], notBefore: 10, printed: false }] : []),
    ],
  };
};

export const printedTests = {
  B: letter("B"),
  C: letter("C"),
  D: letter("D"),
  "UL 489": ul489(false),
  "UL 489 typical": ul489(true),
};

/** W a pole may lose at its rating, by ratings up to and including; IEC 60898-1, from memory. */
const powerLoss = [
  [10, 3],
  [16, 3.5],
  [25, 4.5],
  [32, 6],
  [40, 7.5],
  [50, 9],
  [63, 13],
  [100, 15],
  [125, 20],
];

export const lossLimit = (rating) => powerLoss.find(([to]) => rating <= to)?.[1];
