import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { blankMeans, optional, quantity } from "../../definition/parameter";
import { say } from "../../metrology/say";

// Limits far outside any breaker, so that no square of a slip of the keyboard leaves the numbers.

export const pickup = quantity(
  "A",
  "the current the breaker just carries for ever",
  z.number().check(z.minimum(1e-3), z.maximum(1e6)),
);

export const timeConstant = quantity(
  "s",
  "how slowly the strip warms: after this time 63 % of the way is done",
  z.number().check(z.minimum(1e-3), z.maximum(1e6)),
);

/** A current that flows, or 0 where `off` has a meaning. */
export const testCurrent = (meaning: string) => quantity("A", meaning, z.number().check(z.positive(), z.maximum(1e6)));
export const currentOrOff = (meaning: string) =>
  quantity("A", meaning, z.number().check(z.nonnegative(), z.maximum(1e6)));

/** A long steady current before the test. */
export const preload = optional(blankMeans(currentOrOff("the steady current carried for long before"), 0), "cold");

export const startState = optional(
  quantity("", "thermal state at the start: 0 is cold, 1 is the trip", z.number().check(z.minimum(0), z.maximum(1))),
  "0, cold",
);

/** A preload that trips the breaker is no start of a test. */
export const preloadBelow = (pickup: number, preload = 0): number => {
  if (preload < pickup) return preload;
  throw new BadInput(
    `preload: less than the pickup of ${say(pickup, "A", 6)} is wanted, not ${say(preload, "A", 6)}: carried for long, that current trips the breaker before the test begins.`,
  );
};
