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

export const slowEnd = (top: number, u: number, point: TripPoint): End =>
  endAt(top, u, slowest(point, top, Math.exp(u)), slowestSlope(point, top, Math.exp(u)));

/** A stretch of u in which one trip point governs. */
export interface Stretch {
  readonly low: End;
  readonly high: End;
  readonly point: TripPoint;
}

/** The stretches from the closest gap to the widest. */
export const stretchesOf = (governing: (u: number) => TripPoint, top: number, from: number, to: number): Stretch[] => {
  const stretches: Stretch[] = [];
  const add = (start: number, end: number, point: TripPoint): void => {
    stretches.push({ low: slowEnd(top, start, point), high: slowEnd(top, end, point), point });
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
