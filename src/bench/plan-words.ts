import type { Bench } from "../trip/conditions";

// Cautions that stand on more than one line of a plan.

export const handsOff = "Leads and terminals get hot enough to burn: hands off.";

export const lateThen = "Not tripped by the end: late; switch the source off.";

export const setOnLink = "Set the current on a link first, not through the breaker.";

export const staysWithIt = "Somebody stays with it all the time.";

/** Where the marked setting lies so low that the magnet may trip in a test of the strip. */
export const noTestOfTheStrip = ({ magnetic }: Bench, current: number): readonly string[] =>
  magnetic && current > magnetic.lower
    ? ["The magnetic release may trip at this current, so it is no test of the strip: only a trip at less shows that."]
    : [];

/** A sentence for breakers of several poles only. */
export const allInSeries = (poles: number): readonly string[] => (poles > 1 ? ["All poles in series."] : []);
