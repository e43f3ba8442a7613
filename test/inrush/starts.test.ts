import { mostStartsPerHour, repeatedStarts, type StartingDuty } from "../../src/inrush/starts";
import { courseOf } from "../../src/thermal/profile";

const relative = (found: number, expected: number) => Math.abs(found / expected - 1);

// The duties P4 and P5 of the current profiles: mpmath 1.2 and scipy 1.10 solve_ivp.
describe("repeated starts against an integrator", () => {
  const body = { pickup: 18, timeConstant: 150 };

  test("30 A for 20 s every 60 s trips in the eighth start, 439.249 s after the first began", () => {
    const starts = repeatedStarts(body, { startCurrent: 30, startTime: 20, runningCurrent: 0, period: 60 });
    expect(starts.trip?.start).toBe(8);
    expect(relative(7 * 60 + (starts.trip?.seconds ?? 0), 439.24903966728357)).toBeLessThan(1e-12);
    expect(relative(starts.stateAfter(1), 112.3440128613473 / 324)).toBeLessThan(1e-12);
    expect(relative(starts.stateAt(7 * 60), 245.13140852121472 / 324)).toBeLessThan(1e-12);
  });

  test("25 A for 20 s every 80 s holds: 0.58253 after fifty starts", () => {
    const starts = repeatedStarts(body, { startCurrent: 25, startTime: 20, runningCurrent: 0, period: 80 });
    expect(starts.trip).toBeUndefined();
    expect(relative(starts.stateAfter(1), 78.01667559815785 / 324)).toBeLessThan(1e-12);
    expect(relative(starts.stateAfter(50), 0.5825329778047158)).toBeLessThan(1e-12);
    expect(relative(starts.stateAt(50 * 80), 126.51666452978458 / 324)).toBeLessThan(1e-12);
    expect(Math.abs(starts.settles - 0.5825329778047158)).toBeLessThan(1e-11);
  });
});

describe("repeated starts", () => {
  const body = { pickup: 24, timeConstant: 60 };
  const duty = (period: number): StartingDuty => ({ startCurrent: 96, startTime: 1.5, runningCurrent: 14, period });

  /** The same, segment by segment, for some starts. */
  const course = (period: number, starts: number) => {
    const { startCurrent, startTime, runningCurrent } = duty(period);
    const segments = Array.from({ length: starts }, () => [
      { seconds: startTime, from: startCurrent, to: startCurrent },
      { seconds: period - startTime, from: runningCurrent, to: runningCurrent },
    ]).flat();
    return courseOf(body, segments, 0);
  };

  test("agree with a profile of currents, warm running in between", () => {
    const starts = repeatedStarts(body, duty(60));
    const { heats } = course(60, 5);
    [1, 2, 3, 4].forEach((start) => {
      expect(starts.stateAfter(start)).toBeCloseTo((heats[2 * start - 1] as number) / 576, 12);
      expect(starts.stateAt(60 * start)).toBeCloseTo((heats[2 * start] as number) / 576, 12);
    });
  });

  test("trip where the profile trips", () => {
    const starts = repeatedStarts(body, duty(30));
    expect((starts.trip?.start ?? 0) * 30 - 30 + (starts.trip?.seconds ?? 0)).toBeCloseTo(
      course(30, 20).tripSeconds,
      9,
    );
  });

  test("the most starts per hour is an edge: a little more often trips, a little less often holds for ever", () => {
    const period = 3600 / mostStartsPerHour(body, duty(1));
    expect(repeatedStarts(body, duty(period * 0.999)).trip).toBeDefined();
    expect(repeatedStarts(body, duty(period * 1.001)).trip).toBeUndefined();
    expect(course(period * 0.999, 200).tripSeconds).toBeLessThan(Infinity);
    expect(course(period * 1.001, 200).tripSeconds).toBe(Infinity);
    expect(repeatedStarts(body, duty(period)).settles).toBeCloseTo(1, 12);
  });

  test("starting more often never leaves the strip cooler", () => {
    let before = 0;
    for (let period = 600; period >= 2; period -= 1) {
      const { settles } = repeatedStarts(body, duty(period));
      expect(settles).toBeGreaterThanOrEqual(before);
      before = settles;
    }
  });

  test("one start that trips a warm strip allows none per hour; a start below the pickup any number", () => {
    expect(mostStartsPerHour(body, { startCurrent: 96, startTime: 20, runningCurrent: 14 })).toBe(0);
    expect(mostStartsPerHour(body, { startCurrent: 24, startTime: 5, runningCurrent: 14 })).toBe(Infinity);
    expect(
      repeatedStarts(body, { startCurrent: 24, startTime: 5, runningCurrent: 14, period: 5 }).trip,
    ).toBeUndefined();
  });

  test("far apart, every start but the first begins as warm as running leaves the strip", () => {
    const starts = repeatedStarts(body, duty(1e5));
    const running = (14 / 24) ** 2;
    expect(starts.settledStart).toBe(2);
    expect(starts.stateAfter(2)).toBeCloseTo(16 - (16 - running) * Math.exp(-1.5 / 60), 12);
  });

  test("a single start that is too long trips in start 1", () => {
    const { trip } = repeatedStarts(body, { startCurrent: 96, startTime: 20, runningCurrent: 14, period: 600 });
    // by hand: 60 s × ln(16 ÷ 15) = 3.8723 s
    expect(trip).toEqual({ start: 1, seconds: expect.closeTo(3.8723, 4) });
  });
});
