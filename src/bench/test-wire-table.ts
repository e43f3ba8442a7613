import type { PublishedTable, Source, Standing } from "../metrology/source";

/** The copper conductor that a document wants at each terminal of a breaker under test. */
export interface TestWire {
  /** The largest rating of the row, A. */
  readonly upTo: number;
  readonly size: string;
  /** m, at least, at each terminal. */
  readonly metres: number;
  /** Where the row stands otherwise than its table. */
  readonly standing?: Standing;
}

export interface TestWireTable {
  readonly rows: readonly TestWire[];
  readonly source: Source;
}

/** The source of a table with its rows; `remark`: what its title says beyond what it holds. */
export const testWireTable = (source: Source, rows: readonly TestWire[], remark = ""): TestWireTable => {
  const printed: PublishedTable = {
    title: `Test conductors${remark}`,
    columns: [["rating up to", "A"], ["copper"], ["at each terminal, at least", "m"]],
    rows: rows.map(({ upTo, size, metres }) => [upTo, size, metres]),
    standings: rows.map(({ standing = source.standing }) => standing),
    guard: "test/bench/test-wire.published.test.ts",
  };
  return { rows, source: { ...source, tables: [printed] } };
};
