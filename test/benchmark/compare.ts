// Two ways of the same work, timed in turn in one process, so that the machine's mood falls on both. Only their ratio is told.
// Time is the processor time of this process: other programs on the machine do not count.

/** One line of the table. */
export interface Comparison {
  readonly what: string;
  readonly against: string;
  /** Ours ÷ baseline, pair by pair. */
  readonly ratios: readonly number[];
  readonly goal: string;
  /** Where the goal is a time and not a ratio: how long ours took, ms, run by run. */
  readonly ms?: readonly number[];
}

/** Starts a watch of this process' processor time; the watch tells ms. */
export const processorTime = (): (() => number) => {
  const start = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
};

const timed = (work: () => unknown): number => {
  const took = processorTime();
  const result = work();
  const ms = took();
  // A result that nobody looks at may be optimised away.
  if (result === undefined) throw new Error("the work gave nothing");
  return ms;
};

export const compare = (
  what: string,
  ours: () => unknown,
  against: string,
  baseline: () => unknown,
  goal: string,
  runs = 9,
): Comparison => {
  ours();
  baseline();
  const pairs = Array.from({ length: runs }, (_, i) => {
    // Who goes first changes, so that a warm cache helps neither.
    if (i % 2 === 0) return [timed(ours), timed(baseline)] as const;
    const base = timed(baseline);
    return [timed(ours), base] as const;
  });
  return { what, against, ratios: pairs.map(([mine, base]) => mine / base), goal, ms: pairs.map(([mine]) => mine) };
};

/** How long a piece of work takes, run by run, where the goal is a time. */
export const measure = (what: string, work: () => unknown, goal: string, runs = 9): Comparison => ({
  what,
  against: "",
  ratios: [],
  goal,
  ms: Array.from({ length: runs }, () => timed(work)),
});

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] as number;
