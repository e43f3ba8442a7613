import { boards } from "./boards";
import { bundles } from "./bundles";
import { cells } from "./cells";
import { columns } from "./columns";
import { type Comparison, median } from "./compare";
import { firstPaint } from "./first-paint";
import { fits } from "./fits";
import { setup } from "./setup";
import { workbooks } from "./workbooks";

// npm run benchmark: prints one table. Ratios are medians of runs taken in turn in this one process; the spread shows the machine's noise.

const number = (value: number): string => value.toPrecision(3);
const spread = (values: readonly number[]): string =>
  `${number(median(values))} (${number(Math.min(...values))} to ${number(Math.max(...values))})`;

const line = ({ what, against, ratios, goal, ms = [] }: Comparison): string =>
  [
    what,
    against || "–",
    ratios.length > 0 ? `${spread(ratios)} ×` : "–",
    ms.length > 0 ? `${spread(ms)} ms` : "–",
    goal,
  ].join(" | ");

process.stdout.write("what | against | ratio: median (least to most) | ours | goal\n--- | --- | --- | --- | ---\n");
for (const part of [setup, columns, cells, boards, fits, workbooks, bundles, firstPaint])
  for (const comparison of await part()) process.stdout.write(`${line(comparison)}\n`);
// The engine keeps timers of its own.
process.exit(0);
