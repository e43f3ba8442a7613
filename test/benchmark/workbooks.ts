import { spawnSync } from "node:child_process";
import { call } from "../../src/definition/call";
import { catalogued } from "./catalogued";
import { type Comparison, processorTime } from "./compare";
import { engineTime, logOf } from "./engine";

const formulas = 100_000;

/** A workbook of many formulas: whose time it is, and what memory it takes; how soon a command answers. */
export const workbooks = async (): Promise<Comparison[]> => {
  const log = logOf(formulas, (row) => `=BIMETAL.TRIP.RANGE(A${row},20,"C")`);
  const ms: number[] = [];
  const ratios: number[] = [];
  for (let run = 0; run < 3; run++) {
    const mine = roadTime(log);
    ms.push(mine);
    ratios.push(mine / (await engineTime(log)));
  }
  const megabytes = process.memoryUsage().rss / 1e6;
  return [
    {
      what: `workbook of ${formulas} formulas of TRIP.RANGE: their calls alone, checks included`,
      against: `the whole recalculation by the engine (${megabytes.toFixed(0)} MB resident at its end)`,
      ratios,
      goal: "≤ 0.1 ×: the engine's time, not ours",
      ms,
    },
    {
      what: "start of `cell` to its answer (whole process)",
      against: "an empty Node process",
      ...startUp(),
      goal: "≤ 1.5 s",
    },
  ];
};

/** The same calls without an engine, ms. */
const roadTime = ({ sheets }: ReturnType<typeof logOf>): number => {
  const trip = catalogued("TRIP.RANGE");
  const currents = sheets[0]?.cells.filter(({ formula }) => formula === undefined) ?? [];
  const took = processorTime();
  let answered = 0;
  for (const { value } of currents) answered += call(trip, [value, 20, "C"]).length;
  if (answered !== formulas) throw new Error(`${answered} of ${formulas} calls were answered`);
  return took();
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
