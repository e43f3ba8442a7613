import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { blankMeans, column, optional, type Parameter, quantity, word } from "../../definition/parameter";
import { say } from "../../metrology/say";
import type { Trial } from "../../thermal/trial";
import type { Characteristic } from "../../trip/characteristic";
import { instantaneousSeconds } from "../../trip/iec60898-tables";
import type { OwnBand } from "../../trip/own-band";
import { magneticBand } from "../../trip/ul489-tables";
import { currentOrOff, testCurrent } from "./body";

const known = word("tripped or held, for each trial", ["tripped", "held"]);

/** A blank outcome never becomes a trip. */
const outcome: Parameter<"tripped" | "held"> = {
  ...known,
  read: (cell, name) => {
    if (cell === null || cell === "" || cell === 0)
      throw new BadInput(`${name}: no outcome beside a trial; say tripped or held.`);
    if (typeof cell === "string" && cell.trim().toLowerCase() === "ramped")
      throw new BadInput(`${name}: a current turned up until the trip is no trial at one current; leave that row out.`);
    return known.read(cell, name);
  },
};

export const currents = column(testCurrent("the steady current of each trial, r.m.s."));
export const times = column(
  quantity("s", "the time to trip, or for which it held", z.number().check(z.positive(), z.maximum(1e9)), {
    ifBlank: "no time beside a current.",
  }),
);
export const outcomes = optional(column(outcome), "all tripped");
export const preloads = optional(
  column(blankMeans(currentOrOff("the steady current carried for long before each trial"), 0)),
  "all from cold",
);

/** What is known of the kind of breaker, so that magnetic trips can be told from thermal ones. */
interface Kind {
  readonly rating?: number;
  readonly characteristic?: Characteristic | OwnBand;
  readonly setting?: number;
}

/** The current, A, up to which the magnetic release takes no part; undefined where nothing tells it. */
const lowerMagnetic = ({ rating, characteristic, setting }: Kind): number | undefined => {
  // Both documents with a marked setting let no magnetic trip happen below 80 % of it.
  if (characteristic === undefined) return setting === undefined ? undefined : magneticBand.lower * setting;
  if ("rows" in characteristic) return undefined;
  if (rating === undefined)
    throw new BadInput("rating: the characteristic is told in multiples of the rating; give the rating too.");
  return characteristic.magnetic(rating, setting)?.lower;
};

interface Log {
  readonly currents: readonly number[];
  readonly times: readonly number[];
  readonly outcomes?: readonly ("tripped" | "held")[];
  readonly preloads?: readonly number[];
}

/** One breaker's trials are some dozens. More are the log of a whole bench, and every held current asks for a search of its own. */
const mostTrials = 500;

/** The rows of a log as trials; magnetic trips, faster than a thermal one can be or above the band's edge, are counted and left out. */
export const trialsOf = (log: Log & Kind): { trials: Trial[]; leftOut: number } => {
  if (log.currents.length > mostTrials)
    throw new BadInput(
      `currents: at most ${mostTrials} trials of one breaker are taken, not ${log.currents.length}; hand over the rows of one breaker alone.`,
    );
  const lower = lowerMagnetic(log) ?? Infinity;
  const all = log.currents.map((current, i): Trial => {
    const preload = log.preloads?.[i] ?? 0;
    return { current, seconds: log.times[i] as number, held: log.outcomes?.[i] === "held", preload };
  });
  const trials = all.filter(
    ({ held, seconds, current }) => held || (seconds >= instantaneousSeconds && current <= lower),
  );
  return { trials, leftOut: all.length - trials.length };
};

/** "tripped after 28.8 s at 51 A", "held for 600 s at 25 A, warm from 16 A". */
export const sayTrial = ({ held, seconds, current, preload }: Trial): string =>
  `${held ? "held for" : "tripped after"} ${say(seconds, "s")} at ${say(current, "A")}${preload > 0 ? `, warm from ${say(preload, "A")}` : ""}`;
