import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Comparison } from "./compare";

/** How much an Excel with the add-in downloads of ours, once: scripts, styles, pages; office.js apart. */
export const bundles = (): Comparison[] => {
  const folder = join(process.cwd(), "dist/excel");
  const sizes = readdirSync(folder)
    .filter((name) => /\.(js|css|html|json)$/.test(name))
    .map((name) => ({ name, kB: gzipSync(readFileSync(join(folder, name))).length / 1000 }))
    .filter(({ kB }) => kB >= 1);
  const total = sizes.reduce((sum, { kB }) => sum + kB, 0);
  return [
    {
      what: `add-in, gzipped: ${sizes.map(({ name, kB }) => `${name} ${kB.toFixed(0)} kB`).join(", ")}; together ${total.toFixed(0)} kB`,
      against: "",
      ratios: [],
      goal: "≤ 120 kB",
    },
  ];
};
