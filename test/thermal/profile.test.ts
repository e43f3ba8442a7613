import { array, assert, double, property, record } from "fast-check";
import { Solver } from "odex";
import { courseOf } from "../../src/thermal/profile";
import { heatWithin, hottestMoment, type Segment } from "../../src/thermal/segment";
import published from "./current-profiles.json";

type Written = { duration: number; from_A: number; to_A: number };
const written = (segments: Written[] | { repeat: number; cycle: Written[] }): Segment[] => {
  const all = Array.isArray(segments) ? segments : Array.from({ length: segments.repeat }, () => segments.cycle).flat();
  return all.map(({ duration, from_A, to_A }) => ({ seconds: duration, from: from_A, to: to_A }));
};
const near = (found: number, expected: number, within = 1e-9) =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(within * Math.abs(expected));

describe("profiles against exact solutions (mpmath and scipy: see current-profiles.json)", () => {
  test.each(published.profiles)("$id: $description", ({ tau, Iu, theta0, segments, expected }) => {
    const course = courseOf({ pickup: Iu, timeConstant: tau }, written(segments), theta0);
    if (expected.t_trip === null) expect(course.tripSeconds).toBe(Infinity);
    else near(course.tripSeconds, expected.t_trip);
    const ends = course.heats.slice(1);
    if (Array.isArray(expected.theta_at_segment_ends)) {
      expect(ends).toHaveLength(expected.theta_at_segment_ends.length);
      expected.theta_at_segment_ends.forEach((heat, i) => {
        near(ends[i] as number, heat);
      });
    } else {
      const { first, last, count } = expected.theta_at_segment_ends;
      expect(ends).toHaveLength(count);
      near(ends[0] as number, first);
      near(ends.at(-1) as number, last);
    }
    if (expected.theta_max !== null) {
      near(course.highest, expected.theta_max);
      near(course.highestSeconds, expected.t_of_theta_max as number, 1e-7);
    }
  });

  test("a triangle's peak current 1 mA over the edge trips in its falling half, 1 mA under it holds", () => {
    const body = { pickup: 20, timeConstant: 40 };
    const triangle = (peak: number): Segment[] => [
      { seconds: 60, from: 0, to: peak },
      { seconds: 60, from: peak, to: 0 },
    ];
    const edge = published.triangle_edge_peak_A;
    const over = courseOf(body, triangle(edge + 1e-3), 0).tripSeconds;
    expect(over).toBeGreaterThan(60);
    expect(over).toBeLessThan(120);
    expect(courseOf(body, triangle(edge - 1e-3), 0).tripSeconds).toBe(Infinity);
    // the edge itself, to its last printed digits
    expect(courseOf(body, triangle(edge + 1e-9), 0).tripSeconds).toBeLessThan(Infinity);
    expect(courseOf(body, triangle(edge - 1e-9), 0).tripSeconds).toBe(Infinity);
  });
});

describe("profiles against an ODE solver (odex, a general-purpose library)", () => {
  const heatByOdex = (timeConstant: number, segments: readonly Segment[], heat: number): number => {
    let now = heat;
    for (const { seconds, from, to } of segments) {
      const solver = new Solver(1);
      solver.absoluteTolerance = 1e-12;
      solver.relativeTolerance = 1e-12;
      const slope = (_: number, [theta]: number[]) => 0 * _ + (0 - (theta as number)) / timeConstant;
      const driven = (t: number, theta: number[]) => [
        (from + ((to - from) * t) / seconds) ** 2 / timeConstant + slope(t, theta),
      ];
      now = solver.solve(driven, 0, [now], seconds).y[0] as number;
    }
    return now;
  };
  const current = () => double({ min: 0, max: 60, noNaN: true });
  const segment = () =>
    record({ seconds: double({ min: 0.1, max: 300, noNaN: true }), from: current(), to: current() });

  test("steps and ramps leave the heat that the solver finds", () => {
    assert(
      property(
        array(segment(), { minLength: 1, maxLength: 4 }),
        double({ min: 5, max: 400, noNaN: true }),
        (segments, timeConstant) => {
          const exact = courseOf({ pickup: 1e6, timeConstant }, segments, 100).heats.at(-1) as number;
          expect(Math.abs(exact - heatByOdex(timeConstant, segments, 100))).toBeLessThan(1e-8 * (1 + exact));
        },
      ),
      { numRuns: 60 },
    );
  });

  test("no moment of a segment is hotter than its hottest, and a trip comes exactly when the heat gets there", () => {
    assert(
      property(segment(), current(), double({ min: 5, max: 400, noNaN: true }), (segment, start, timeConstant) => {
        const heat = start * start;
        const hottest = heatWithin(timeConstant, segment, heat, hottestMoment(timeConstant, segment, heat));
        for (let i = 0; i <= 50; i++) {
          const now = heatWithin(timeConstant, segment, heat, (segment.seconds * i) / 50);
          expect(now).toBeLessThanOrEqual(hottest * (1 + 1e-12) + 1e-12);
        }
        const pickup = Math.sqrt(heat + 0.7 * (hottest - heat) + 1e-6);
        const { tripSeconds } = courseOf({ pickup, timeConstant }, [segment], heat);
        if (hottest < pickup * pickup) expect(tripSeconds).toBe(Infinity);
        else expect(heatWithin(timeConstant, segment, heat, tripSeconds)).toBeCloseTo(pickup * pickup, 6);
      }),
    );
  });
});

test("a fast ramp keeps its digits: to leading order θ = r²t³/(3τ)", () => {
  // Series of dθ/dt = (r²t² − θ)/τ by hand: θ = r²t³/(3τ)·(1 − t/(4τ) + …); here t/τ = 1e-6.
  const heat = heatWithin(1e6, { seconds: 1, from: 0, to: 1000 }, 0, 1);
  near(heat, (1e6 / 3e6) * (1 - 1e-6 / 4), 1e-12);
});
