import { call } from "../../src/definition/call";
import { catalogue } from "../../src/functions";
import { cellsFrom } from "../../src/hosts/engine/book";
import { calculate } from "../../src/hosts/engine/calculate";
import { catalogued } from "./catalogued";
import { type Comparison, measure, processorTime } from "./compare";

const formulas = 5000;
const roadCalls = 100_000;

/** Separate cells: one formula each, as a log that grew line by line has them. */
export const cells = async (): Promise<Comparison[]> => {
  const trip = catalogued("TRIP.RANGE");
  const one = measure(
    `TRIP.RANGE, ${roadCalls} separate calls through the road`,
    () => {
      let called = 0;
      for (let i = 0; i < roadCalls; i++) called += call(trip, [21 + (i % 200), 20, "C"]).length;
      return called;
    },
    `≤ 5 µs each, that is ≤ ${(roadCalls * 5) / 1000} ms`,
  );
  const ours = await engineTimes((row) => `=BIMETAL.TRIP.RANGE(A${row},20,"C")`);
  const builtIn = await engineTimes((row) => `=INDEX(HSTACK(LN(A${row}),LN(A${row}/2)),1,0)`);
  return [
    one,
    {
      what: `TRIP.RANGE, ${formulas} cells of a workbook, calculated by the engine`,
      against: "as many cells of built-ins that spill two cells (INDEX, HSTACK, LN)",
      ratios: ours.map((time, i) => time / (builtIn[i] as number)),
      ms: ours,
      goal: "near 1 ×: the engine's own cost",
    },
  ];
};

const engineTimes = async (formula: (row: number) => string): Promise<number[]> => {
  const rows = Array.from({ length: formulas }, (_, i) => [21 + (i % 200), formula(i + 1)]);
  const book = { sheets: [{ name: "Log", cells: cellsFrom(rows) }] };
  const times: number[] = [];
  for (let run = 0; run < 5; run++) {
    const took = processorTime();
    const calculated = await calculate(book, catalogue);
    times.push(took());
    if (typeof calculated.valueAt({ sheet: "Log", row: 1, column: 1 }) !== "number")
      throw new Error("the engine gave no number");
    calculated.close();
  }
  return times;
};
