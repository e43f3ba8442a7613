import { spawnSync } from "node:child_process";
import type { AnyDefinition } from "../../src/definition/define";
import { catalogue } from "../../src/functions";
import type { Comparison } from "./compare";
import { engineTime, logOf } from "./engine";

const formulas = 100_000;

/** A workbook of many formulas: whose time it is, and what memory it takes; how soon a command answers. */
export const workbooks = async (): Promise<Comparison[]> => {
  const watched = withWatch(catalogue);
  const whole = await engineTime(
    logOf(formulas, (row) => `=BIMETAL.CONTACT.WATTS(A${row},0.16)`),
    watched.catalogue,
  );
  const ours = watched.ms();
  const megabytes = process.memoryUsage().rss / 1e6;
  return [
    {
      what: `workbook of ${formulas} formulas, recalculated: our functions' part`,
      against: `the whole recalculation (${(whole / 1000).toFixed(1)} s, ${megabytes.toFixed(0)} MB resident at its end)`,
      ratios: [ours / whole],
      goal: "the engine's time, not ours",
      ms: [ours],
    },
    {
      what: "start of `cell` to its answer (whole process)",
      against: "an empty Node process",
      ...startUp(),
      goal: "≤ 1.5 s",
    },
  ];
};

/** The same functions, with a watch on the time they take themselves. */
const withWatch = (definitions: readonly AnyDefinition[]): { catalogue: AnyDefinition[]; ms: () => number } => {
  let spent = 0;
  const watchedCatalogue = definitions.map((definition) => ({
    ...definition,
    calculate: (given: never) => {
      const start = performance.now();
      const answer = definition.calculate(given);
      spent += performance.now() - start;
      return answer;
    },
  }));
  return { catalogue: watchedCatalogue, ms: () => spent };
};

const startUp = (): Pick<Comparison, "ratios" | "ms"> => {
  const wall = (args: string[]): number => {
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
    if (status !== 0) throw new Error(stderr);
    return performance.now() - start;
  };
  const pairs = Array.from(
    { length: 5 },
    () => [wall(["dist/workbook/cell.mjs", "=BIMETAL.CONTACT.WATTS(20,0.16)"]), wall(["-e", "0"])] as const,
  );
  return { ratios: pairs.map(([mine, empty]) => mine / empty), ms: pairs.map(([mine]) => mine) };
};
