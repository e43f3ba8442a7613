import { root } from "../metrology/root";
import { slowest, slowestSlope, timeConstants } from "./body";
import type { TripPoint } from "./characteristic";

// The edges of the admissible set: along each of them a body is told by u = ln δ (body.ts).

const samples = 512;

/** A body on an edge of the set, with what every question asks of it. */
export interface End {
  readonly u: number;
  readonly gap: number;
  readonly pickup: number;
  readonly timeConstant: number;
  /** d ln(time constant)/du along its edge */
  readonly slope: number;
}

export const endAt = (top: number, u: number, timeConstant: number, slope: number): End => ({
  u,
  gap: Math.exp(u),
  pickup: pickupAt(top, u),
  timeConstant,
  slope,
});

const slowEnd = (top: number, u: number, point: TripPoint): End =>
  endAt(top, u, slowest(point, top, Math.exp(u)), slowestSlope(point, top, Math.exp(u)));

/** A stretch of u in which one trip point governs. */
export interface Stretch {
  /** At the closest gap and at the widest. */
  readonly ends: readonly [End, End];
  readonly point: TripPoint;
}

/** The stretches from the closest gap to the widest. */
export const stretchesOf = (governing: (u: number) => TripPoint, top: number, from: number, to: number): Stretch[] => {
  const stretches: Stretch[] = [];
  const add = (start: number, end: number, point: TripPoint): void => {
    stretches.push({ ends: [slowEnd(top, start, point), slowEnd(top, end, point)], point });
  };
  let start = from;
  let point = governing(from);
  for (let i = 1; i <= samples; i++) {
    const u = from + ((to - from) * i) / samples;
    const next = governing(u);
    if (next === point) continue;
    const ratio = (v: number): number => Math.log(slowest(next, top, Math.exp(v)) / slowest(point, top, Math.exp(v)));
    const change = root(ratio, from + ((to - from) * (i - 1)) / samples, u);
    add(start, change, point);
    [start, point] = [change, next];
  }
  add(start, to, point);
  return stretches;
};

export const pickupAt = (top: number, u: number): number => Math.sqrt(top - Math.exp(u));

/** s to the trip. A pickup at or above the multiple never trips; a start at or above the pickup trips at once. */
export const secondsOf = ({ gap, timeConstant }: End, square: number, start: number, top: number): number =>
  square - top + gap <= 0 ? Infinity : timeConstant * timeConstants(square, start, top, gap);

/** d ln(τ·N)/du, N being the time constants to the trip: where it turns from rising to falling lies a longer time inside. */
const slope = (end: End, square: number, start: number, top: number): number =>
  end.slope - end.gap / ((square - top + end.gap) * timeConstants(square, start, top, end.gap));

export const risesAndFalls = ({ ends: [low, high] }: Stretch, square: number, start: number, top: number): boolean =>
  slope(low, square, start, top) > 0 && slope(high, square, start, top) < 0;

/** The body inside a stretch whose time is the longest. */
export const turningEnd = ({ ends: [low, high], point }: Stretch, square: number, start: number, top: number): End =>
  slowEnd(
    top,
    root((u) => slope(slowEnd(top, u, point), square, start, top), low.u, high.u),
    point,
  );
