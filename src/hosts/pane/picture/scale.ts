import { scaleLinear, scaleLog } from "d3-scale";
import type { Axis } from "../../../definition/plot";
import { say, sayNumber } from "../../../metrology/say";

/** An axis laid on the paper: where a value stands, and which values are marked. */
export interface Laid {
  readonly at: (value: number) => number;
  readonly value: (at: number) => number;
  readonly ticks: readonly { readonly value: number; readonly label: string }[];
  /** Lines between the marked ones, on a log axis. */
  readonly between: readonly number[];
}

/** Values beyond the axis stand at its end: there a band goes on beyond the picture. */
export const lay = (axis: Axis, [start, end]: readonly [number, number]): Laid => {
  const scale = (axis.scale === "log" ? scaleLog() : scaleLinear())
    .domain([axis.from, axis.to])
    .range([start, end])
    .clamp(true);
  const marks = axis.scale === "log" ? logMarks(axis) : { ticks: linearTicks(axis, scale.ticks(5)), between: [] };
  return {
    at: (value) => scale(value),
    value: (at) => scale.invert(at),
    ticks: marks.ticks.map((value) => ({ value, label: sayNumber(value) })),
    between: marks.between,
  };
};

/** Things that are counted (poles, ways) have no halves. Long labels have room for every other one only. */
const linearTicks = ({ quantity, unit }: Axis, ticks: readonly number[]): readonly number[] => {
  const whole = counted.has(quantity) && unit === "" ? ticks.filter(Number.isInteger) : ticks;
  return whole.some((tick) => sayNumber(tick).length > 5) ? whole.filter((_, i) => i % 2 === 0) : whole;
};

const counted = new Set(["pole", "way"]);

/** Each power of ten; where there are few, 2 and 5 times it as well, and within less than a decade even steps. */
const logMarks = ({ from, to }: Axis) => {
  const inside = (value: number) => value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9);
  const first = Math.floor(Math.log10(from));
  const decades = Array.from({ length: Math.ceil(Math.log10(to)) - first + 1 }, (_, i) => 10 ** (first + i));
  const times = (factors: readonly number[]) =>
    decades.flatMap((decade) => factors.map((f) => decade * f)).filter(inside);
  const tens = times([1]);
  const few = times([1, 2, 5]);
  const ticks = tens.length >= 4 ? tens : few.length >= 3 ? few : scaleLinear().domain([from, to]).ticks(4);
  return { ticks: ticks.map((tick) => Number(tick.toPrecision(6))), between: times([2, 3, 4, 5, 6, 7, 8, 9]) };
};

/** A value read off an axis: at its end a band goes on beyond, a time perhaps for ever. */
export const readOff = (value: number, { quantity, from, to, unit }: Axis): string => {
  if (value >= to) return `beyond ${say(to, unit)}${quantity === "time" ? " or never" : ""}`;
  if (value < from) return `below ${say(from, unit)}`;
  return say(value, unit);
};
