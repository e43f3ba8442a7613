/** What a verdict of TRIP.VERDICT says of a test in the end. */
type Judged = "in range" | "out" | "undecided";

const outs: readonly string[] = ["early", "late", "outside the computed band", "did not trip in time"];
const undecided = /^(undecided until .+|too close to call)$/;

/** The words of TRIP.VERDICT in any case and with any spaces; undefined for other words. */
export const judged = (verdict: string): Judged | undefined => {
  const words = folded(verdict);
  if (words === "in range") return "in range";
  if (outs.includes(words)) return "out";
  return undecided.test(words) ? "undecided" : undefined;
};

/** One row of a test log: a breaker and what was found, or why nothing was: "blank", "#N/A". */
export interface LoggedTest {
  readonly breaker: string;
  readonly verdict: { readonly judged: Judged } | { readonly missing: string };
}

/** One breaker's tests. A test without a verdict is in none of the counts but named in `missing`. */
export interface Tally {
  readonly breaker: string;
  readonly counts: Readonly<Record<Judged, number>>;
  /** How often each kind of missing verdict stands beside the breaker. */
  readonly missing: ReadonlyMap<string, number>;
}

/** The breakers of a log in the order they first appear; a name is one in any case and with any spaces. */
export const tallies = (log: readonly LoggedTest[]): readonly Tally[] => {
  const breakers = new Map<string, { breaker: string; counts: Record<Judged, number>; missing: Map<string, number> }>();
  for (const { breaker, verdict } of log) {
    const key = folded(breaker);
    const tally = breakers.get(key) ?? {
      breaker,
      counts: { "in range": 0, out: 0, undecided: 0 },
      missing: new Map<string, number>(),
    };
    breakers.set(key, tally);
    if ("judged" in verdict) tally.counts[verdict.judged]++;
    else tally.missing.set(verdict.missing, (tally.missing.get(verdict.missing) ?? 0) + 1);
  }
  return [...breakers.values()];
};

const folded = (text: string): string => text.trim().replace(/\s+/g, " ").toLowerCase();
