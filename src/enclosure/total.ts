import { type Way, wayWatts } from "./watts";

/** The heat of a whole board, W. */
interface BoardWatts {
  /** Every way at diversity × its load, and the other devices. */
  readonly total: number;
  /** The warmest way, as counted in the total. */
  readonly largest: number;
  /** Its place among the ways, from 0. */
  readonly largestWay: number;
  /** All ways at their loads, before any diversity. */
  readonly ways: number;
  /** The total if some ways carry their whole load and the others nothing, so that the factor counts once. */
  readonly someFull: number;
}

/**
 * Adds up a board. A rated diversity factor is a factor on current; with every circuit at factor × load the heat goes with
 * its square. Other devices (wiring, supplies, lamps) are added as they are.
 */
export const boardWatts = (ways: readonly Way[], otherWatts: number, diversity: number): BoardWatts => {
  const each = ways.map(wayWatts);
  const sum = each.reduce((total, watts) => total + watts, 0);
  const largest = each.reduce((most, watts) => Math.max(most, watts), 0);
  return {
    total: diversity * diversity * sum + otherWatts,
    largest: diversity * diversity * largest,
    largestWay: each.indexOf(largest),
    ways: sum,
    someFull: diversity * sum + otherWatts,
  };
};
