import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Comparison } from "./compare";

/**
 * How much an Excel with the add-in downloads of ours, once, gzipped; office.js apart. The script that ties the functions is needed
 * before a cell can be answered; the page and its styles come with it; the pane and its mathematics come later, by parts of their own.
 */
export const bundles = (): Comparison[] => {
  const folder = join(process.cwd(), "dist/excel");
  const files = readdirSync(folder).map((name) => ({ name, kB: gzippedKilobytes(join(folder, name)) }));
  const functions = files.filter(({ name }) => name === "taskpane.js");
  const later = files.filter(({ name }) => name.endsWith(".js") && name !== "taskpane.js");
  const beside = files.filter(({ name }) => /\.(css|html|json)$/.test(name));
  return [
    told("add-in, gzipped: the script that registers the functions", functions, "≤ 120 kB"),
    told("add-in, gzipped: the pane and its mathematics, loaded after it", later, "no goal"),
    told("add-in, gzipped: page, styles, list of functions", beside, "no goal"),
  ];
};

interface File {
  readonly name: string;
  readonly kB: number;
}

const gzippedKilobytes = (path: string): number =>
  /\.(js|css|html|json)$/.test(path) ? gzipSync(readFileSync(path)).length / 1000 : 0;

const told = (what: string, files: readonly File[], goal: string): Comparison => {
  const list = files.map(({ name, kB }) => `${name} ${kB.toFixed(1)} kB`).join(", ");
  const total = files.reduce((sum, { kB }) => sum + kB, 0);
  return { what: `${what}: ${total.toFixed(1)} kB (${list})`, against: "", ratios: [], goal };
};
