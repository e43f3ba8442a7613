import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import type { Range } from "../../definition/cells";
import { refuseBlock } from "../../definition/lane";
import { list, type Parameter, quantity } from "../../definition/parameter";
import type { Segment } from "../../thermal/segment";
import { currentOrOff } from "./body";

/**
 * A list in which 0 means something: the start of the clock, or no current. A blank cell counts as 0 in every host,
 * since some hosts hand it over as that.
 */
const withZeros = (parameter: Parameter<number>): Parameter<readonly number[]> => ({
  ...list(parameter),
  readBlock: (range: Range, name) => {
    refuseBlock(range, name);
    const read = (cell: Range[number][number], i: number) =>
      cell === null || cell === "" ? 0 : (parameter.read(cell, `${name}, row ${i + 1}`) as number);
    return range.flat().map(read);
  },
});

export const times = withZeros(
  quantity(
    "s",
    "when each current begins, from the start of the clock",
    z.number().check(z.nonnegative(), z.maximum(1e9)),
  ),
);
export const currents = withZeros(currentOrOff("the current from that time on; 0 is off"));

/** A current against time: row i begins at times[i]. */
export interface Profile {
  readonly times: readonly number[];
  readonly currents: readonly number[];
}

/** The rows that count (blank ones at the end do not), checked against each other. */
export const profileOf = ({ times, currents }: Profile): Profile => {
  if (times.length !== currents.length)
    throw new BadInput(`The lists do not fit: times has ${times.length} cells, currents has ${currents.length}.`);
  let rows = times.length;
  while (rows > 1 && times[rows - 1] === 0 && currents[rows - 1] === 0) rows--;
  if (rows < 2) throw new BadInput("times: at least two rows are wanted; the last row only ends the profile.");
  for (let i = 1; i < rows; i++)
    if ((times[i] as number) < (times[i - 1] as number))
      throw new BadInput(`times, row ${i + 1}: the clock goes back from ${times[i - 1]} s to ${times[i]} s.`);
  return { times: times.slice(0, rows), currents: currents.slice(0, rows) };
};

/** The stretches of current between the rows: each current flows on until the next time, or runs straight to the next current. */
export const segmentsOf = ({ times, currents }: Profile, between: "step" | "ramp"): Segment[] =>
  times.slice(1).map((time, i) => ({
    seconds: time - (times[i] as number),
    from: currents[i] as number,
    to: currents[between === "step" ? i : i + 1] as number,
  }));
