import type { Plot } from "../../../definition/plot";
import { say } from "../../../metrology/say";
import { readOff } from "./scale";

/** What a picture says at one x: a cell of text for each of its columns, "" where a series has no sample. */
export interface Reading {
  readonly x: number;
  readonly texts: readonly string[];
  /** The points that stand there: "longest at 51 A: 60 s". */
  readonly points: readonly string[];
}

/** The columns of a picture's table: two for a band, one for a line. */
export const columnsOf = ({ bands = [], lines = [] }: Plot): string[] => [
  ...bands.flatMap(({ name }) => [`${name}, from`, `${name}, to`]),
  ...lines.map(({ name }) => name),
];

/** All samples of a picture by rising x: the rows of its table and the stops of its crosshair. */
export const readingsOf = ({ y, bands = [], lines = [], points = [] }: Plot): Reading[] => {
  const width = bands.length * 2 + lines.length;
  const rows = new Map<number, { x: number; texts: string[]; points: string[] }>();
  const rowAt = (x: number) => {
    const row = rows.get(x) ?? { x, texts: new Array<string>(width).fill(""), points: [] };
    rows.set(x, row);
    return row;
  };
  const put = (x: number, column: number, text: string) => {
    rowAt(x).texts[column] = text;
  };
  bands.forEach(({ samples }, i) => {
    for (const { x, low, high } of samples) {
      put(x, 2 * i, readOff(low, y));
      put(x, 2 * i + 1, readOff(high, y));
    }
  });
  lines.forEach(({ samples }, i) => {
    // A line is drawn to its own values: one that ends at the top has not gone beyond it.
    for (const { x, y: value } of samples)
      put(x, bands.length * 2 + i, value === y.to ? say(value, y.unit) : readOff(value, y));
  });
  for (const { name, x, y: value } of points) {
    const said = say(value, y.unit);
    // "held: 16 A, 3600 s" has said it already.
    rowAt(x).points.push(name.includes(said) ? name : `${name}: ${said}`);
  }
  return [...rows.values()].sort((a, b) => a.x - b.x);
};

/** The stop nearest to x, so that the crosshair starts at what the formula asks about. */
export const nearest = (readings: readonly Reading[], x: number): number =>
  readings.reduce(
    (best, { x: at }, i) => (Math.abs(at - x) < Math.abs((readings[best]?.x ?? Infinity) - x) ? i : best),
    0,
  );
