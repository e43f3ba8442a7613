import { parseArgs } from "node:util";
import fc from "fast-check";
import { promises, runsOf, type Share } from "./promises";
import type { Question } from "./question";
import { questions } from "./questions";
import { count, patience } from "./road";

// npm run fuzz -- --calls 10000000 --seed 7 [--only TRIP]: asks all functions in turn until that many calls were made. Prints the
// seed, the share of questions that was answered, and each broken promise as a formula that can be pasted into a sheet.

const { values } = parseArgs({
  options: { calls: { type: "string" }, seed: { type: "string" }, only: { type: "string" } },
});
const wanted = Number(values.calls ?? 1_000_000);
const seed = Number(values.seed ?? Date.now() % 2 ** 31);
const asked = [...questions].filter(([name]) => name.startsWith((values.only ?? "").toUpperCase()));
if (!(wanted > 0) || !Number.isInteger(seed) || asked.length === 0) {
  process.stderr.write(
    "--calls is to be a number above 0, --seed a whole number, --only the beginning of a function's name.\n",
  );
  process.exit(2);
}

patience.ms = 50;
const shares = new Map<string, Share>(asked.map(([name]) => [name, { asked: 0, answered: 0 }]));
const broken = new Map<string, string>();
const eachRound = 200;

const round = (name: string, question: fc.Arbitrary<Question>, roundSeed: number): void => {
  const property = promises(question, shares.get(name) as Share);
  const options = { seed: roundSeed, numRuns: runsOf(name, eachRound) };
  const { failed, counterexample, errorInstance } = fc.check(property, options);
  if (!failed) return;
  const [formula, row] = counterexample ?? [];
  const told = `${fc.stringify(formula)}\n  ${String(errorInstance)} (row by ${row}, seed ${roundSeed})\n`;
  const kind = `${name} ${String(errorInstance)
    .replace(/[\d.e+-]+/g, "#")
    .slice(0, 80)}`;
  // One formula for each kind of failure is enough to read.
  if (!broken.has(kind)) process.stdout.write(`broken: ${told}`);
  broken.set(kind, told);
};

process.stdout.write(`seed ${seed}, ${wanted} calls of ${asked.length} functions\n`);
const start = Date.now();
for (let rounds = 0; count.calls < wanted; rounds++) {
  for (const [name, question] of asked) if (count.calls < wanted) round(name, question, seed + rounds);
  if (rounds % 50 === 49) process.stderr.write(`${count.calls} calls, ${broken.size} kinds of failure\n`);
}
const total = [...shares.values()].reduce((sum, share) => sum + share.asked, 0);
process.stdout.write("function | questions | answered\n--- | --- | ---\n");
for (const [name, share] of shares)
  process.stdout.write(
    `${name} | ${share.asked} | ${Math.round((100 * share.answered) / Math.max(1, share.asked))} %\n`,
  );
const { ms, question } = count.slowest;
process.stdout.write(
  `seed ${seed}: ${count.calls} calls for ${total} questions in ${((Date.now() - start) / 1000).toFixed(0)} s; slowest ${ms.toFixed(1)} ms: ${question ? fc.stringify(question) : ""}\n${broken.size} kinds of failure\n`,
);
process.exit(broken.size === 0 ? 0 : 1);
