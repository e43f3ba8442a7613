// Cautions that stand on more than one line of a plan.

export const handsOff = "Leads and terminals get hot enough to burn: hands off.";

export const lateThen = "Not tripped by the end: late; switch the source off.";

export const setOnLink = "Set the current on a link first, not through the breaker.";

export const staysWithIt = "Somebody stays with it all the time.";

/** A sentence for breakers of several poles only. */
export const allInSeries = (poles: number): readonly string[] => (poles > 1 ? ["All poles in series."] : []);
