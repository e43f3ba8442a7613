import { poleSpread } from "../../src/contact/spread";

const flagged = (...poles: (number | undefined)[]) => poleSpread(poles).map((pole) => pole?.investigate);

describe("poles compared with the lowest (ANSI/NETA ATS and MTS 7.6.1.1: investigate above 50 % more)", () => {
  // The practice's own check cases, µΩ.
  test("50, 60, 76: only the third is above 75", () => {
    expect(flagged(50, 60, 76)).toEqual([false, false, true]);
  });
  test("130, 180, 150: none is above 195", () => {
    expect(flagged(130, 180, 150)).toEqual([false, false, false]);
  });
  test("50, 75, 75: exactly 1.5 × is not above it", () => {
    expect(flagged(50, 75, 75)).toEqual([false, false, false]);
  });

  test("exactly 1.5 × stays unflagged however the numbers round", () => {
    for (let i = 1; i <= 2000; i++) expect(flagged(i * 1e-7, i * 1.5e-7, i * 1.5001e-7)).toEqual([false, false, true]);
  });

  test("any number of poles, and the order does not matter", () => {
    expect(flagged(1, 2)).toEqual([false, true]);
    expect(flagged(4, 1, 1.2, 1.6)).toEqual([true, false, false, true]);
  });

  test("a common gain error of the meter changes no ratio", () => {
    const ratios = poleSpread([52, 60, 76]).map((pole) => pole?.ratio);
    expect(ratios).toEqual([1, 60 / 52, 76 / 52]);
    poleSpread([52 * 1.03, 60 * 1.03, 76 * 1.03]).forEach((pole, i) => {
      expect(pole?.ratio).toBeCloseTo(ratios[i] as number, 14);
    });
  });

  test("a pole that was not measured keeps its place", () => {
    expect(flagged(50, undefined, 80)).toEqual([false, undefined, true]);
  });
});
