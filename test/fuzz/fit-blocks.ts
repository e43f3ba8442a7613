import { call } from "../../src/definition/call";
import type { Range } from "../../src/definition/cells";
import { catalogued } from "./catalogued";
import { typed } from "./dice";

const secondsOf = (current: number, pickup: number, timeConstant: number): number =>
  timeConstant * Math.log(current ** 2 / (current ** 2 - pickup ** 2));

const down = (cells: readonly (number | string)[]): Range => cells.map((cell) => [cell]);

/** A log of made-up trials, `scatter` up and down in turn, and holds just below the pickup. */
const log = (pickup: number, timeConstant: number, scatter: number, multiples: readonly number[], held: number) => {
  const currents = multiples.map((multiple) => typed(multiple * pickup));
  const times = currents.map((current, i) =>
    typed(secondsOf(current, pickup, timeConstant) * Math.exp((i % 2 === 0 ? 1 : -1) * scatter)),
  );
  const holds = Array.from({ length: held }, (_, i) => typed(pickup * (0.97 - 0.03 * i)));
  return [
    down([...currents, ...holds]),
    down([...times, ...holds.map(() => 1800)]),
    down([...currents.map(() => "tripped"), ...holds.map(() => "held")]),
  ];
};

const logs = [
  log(20, 100, 0.05, [1.2, 1.2, 1.6, 1.6, 2.5, 2.5, 4], 2),
  log(11.3, 30, 0.15, [1.1, 1.5, 2, 3], 0),
  log(40, 250, 0.02, [1.3, 1.3, 2, 2, 3, 3, 3], 1),
  log(7, 60, 0.3, [1.4, 2, 2.1], 1),
  log(16, 80, 0.08, [2, 2, 4, 4, 4], 3),
  log(1.1, 15, 0, [1.5, 2], 0),
];

/** What THERMAL.FIT answers to those logs: blocks as a sheet hands them on to whatever asks for a fit. */
export const fitBlocks: readonly Range[] = logs.map((log) => call(catalogued("THERMAL.FIT"), log) as Range);

/** The pickup that a block tells. */
export const pickupOf = (block: Range): number => block[0]?.[1] as number;
