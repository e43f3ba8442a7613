// npm run fuzz-workbooks -- [minutes] [first seed]: damages workbooks and recalculates them for as long as it is told. A seed that shows a
// fault, takes longer than a minute or ends the process is printed; the same seed makes the same file. `--file SEED` writes it.

import { fork } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bytesOf, corpusWorkbooks } from "../../engine/corpus-workbooks";
import { damaged, tried } from "./trial";

const workbooks = corpusWorkbooks.map(bytesOf);

/** A seed that takes longer is stopped and told. */
const MOST_SECONDS = 60;
/** The engine keeps a little of each workbook, so the process is made anew now and then. */
const SEEDS_EACH = 400;

const work = async (first: number): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), "bimetal-fuzz-"));
  process.on("disconnect", () => process.exit());
  for (let seed = first; seed < first + SEEDS_EACH; seed++) {
    process.send?.({ seed });
    const broken = (thrown: Error) => ({ code: 3, faults: [`the trial itself broke: ${thrown.stack}`] });
    const { code, faults } = await tried(damaged(workbooks, seed), folder).catch(broken);
    process.send?.({ seed, code, faults });
  }
  rmSync(folder, { recursive: true, force: true });
  process.exit(0);
};

const watch = async (minutes: number, first: number): Promise<void> => {
  const until = performance.now() + minutes * 60_000;
  const codes: Record<string, number> = {};
  let [seed, found, done] = [first, 0, 0];
  while (performance.now() < until) {
    let current = seed;
    const [code, signal] = await new Promise<[number | null, string | null]>((resolve) => {
      const child = fork(process.argv[1] ?? "", ["--work", String(seed)], {
        stdio: ["ignore", "ignore", "ignore", "ipc"],
      });
      let timer: ReturnType<typeof setTimeout> | undefined;
      child.on("message", (message: { seed: number; code?: number; faults?: string[] }) => {
        current = message.seed;
        clearTimeout(timer);
        timer = setTimeout(() => child.kill("SIGKILL"), MOST_SECONDS * 1000);
        if (message.code === undefined) return;
        done += 1;
        codes[message.code] = (codes[message.code] ?? 0) + 1;
        for (const fault of message.faults ?? []) {
          found += 1;
          console.log(`seed ${message.seed}: ${fault.slice(0, 2000)}`);
        }
        if (performance.now() > until) child.kill("SIGTERM");
      });
      child.on("close", (exit, by) => {
        clearTimeout(timer);
        resolve([exit, by]);
      });
    });
    if (code !== 0 && signal !== "SIGTERM") {
      found += 1;
      console.log(
        `seed ${current}: ${signal === "SIGKILL" ? `took more than ${MOST_SECONDS} s` : `ended the process (${signal ?? code})`}`,
      );
      seed = current + 1;
    } else seed += SEEDS_EACH;
  }
  console.log(`${done} workbooks from seed ${first} on: exit codes ${JSON.stringify(codes)}, ${found} faults.`);
  process.exitCode = found > 0 ? 1 : 0;
};

const [first = "10", second = "1"] = process.argv.slice(2);
if (first === "--work") void work(Number(second));
else if (first === "--file") writeFileSync("damaged.xlsx", damaged(workbooks, Number(second)));
else if (Number(first) > 0 && Number.isInteger(Number(second))) void watch(Number(first), Number(second));
else throw new Error("npm run fuzz-workbooks -- [minutes] [first seed], or --file SEED");
