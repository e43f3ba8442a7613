// Simulated coverage of the 95 % limits of a fit. Not a timed test; run it by hand:
//   node test/thermal/coverage.mjs [data sets per design, default 1000]
// The random numbers are fixed, so the figures in coverage.md come out again.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import ts from "typescript";

const require = createRequire(import.meta.url);
require.extensions[".ts"] = (module, file) => {
  const options = { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022, esModuleInterop: true };
  module._compile(
    ts.transpileModule(readFileSync(file, "utf8"), { compilerOptions: options, fileName: file }).outputText,
    file,
  );
};
const { fittedTo } = require("../../src/thermal/fit.ts");
const { forecast, holdProbability } = require("../../src/thermal/forecast.ts");
const { NoAnswer } = require("../../src/metrology/no-answer.ts");
const { secondsToTrip } = require("../../src/thermal/body.ts");

/** Mulberry32, a small general-purpose generator. */
const uniform = (seed) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

const repeated = (currents, times) => currents.flatMap((current) => Array(times).fill(current));
const holds = (current, seconds, times) => Array.from({ length: times }, () => ({ current, seconds }));
/** The true breakers, what is tried on them, and the current of the trial that is forecast. */
const designs = [
  { name: "A: 3 currents × 2", pickup: 20, tau: 100, sigma: 0.08, trips: repeated([30, 45, 60], 2), asked: 40 },
  {
    name: "B: 6 currents × 2",
    pickup: 20,
    tau: 100,
    sigma: 0.08,
    trips: repeated([25, 30, 40, 51, 60, 80], 2),
    asked: 35,
  },
  {
    name: "C: 8 trips, 2 one-hour holds",
    pickup: 20,
    tau: 100,
    sigma: 0.08,
    trips: repeated([27, 35, 51, 80], 2),
    held: holds(19, 3600, 2),
    asked: 24,
  },
  {
    name: "D: 9 trials, cut off at 120 s",
    pickup: 20,
    tau: 100,
    sigma: 0.1,
    trips: repeated([23, 26, 30, 40, 51], 2).slice(1),
    cutOff: 120,
    asked: 28,
  },
  {
    name: "E: 6 currents × 5",
    pickup: 20,
    tau: 100,
    sigma: 0.08,
    trips: repeated([25, 30, 40, 51, 60, 80], 5),
    asked: 35,
  },
];

const percent = (count, of) => `${((100 * count) / of).toFixed(1)}`.padStart(6);
const sets = Number(process.argv[2] ?? 1000);
console.log(`${sets} data sets each; true pickup 20 A, time constant 100 s`);
console.log(
  "design                          pickup  tau    sigma  next trip  from profile  refused  open low  mean HOLDS  held",
);
designs.forEach(({ name, pickup, tau, sigma, trips, held = [], cutOff = Infinity, asked }, d) => {
  const next = uniform(20240601 + d);
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  const shoot = (current) => secondsToTrip({ pickup, timeConstant: tau }, current) * Math.exp(sigma * normal());
  const seen = {
    fitted: 0,
    pickup: 0,
    tau: 0,
    sigma: 0,
    next: 0,
    profile: 0,
    refused: 0,
    open: 0,
    promised: 0,
    held: 0,
    asked: 0,
  };
  const question = secondsToTrip({ pickup, timeConstant: tau }, asked) * Math.exp(-sigma);
  for (let i = 0; i < sets; i++) {
    const trials = trips.map((current) => {
      const seconds = shoot(current);
      return { current, seconds: Math.min(seconds, cutOff), held: seconds > cutOff, preload: 0 };
    });
    for (const { current, seconds } of held) trials.push({ current, seconds, held: true, preload: 0 });
    const truth = shoot(asked);
    try {
      const fitted = fittedTo(trials);
      if (fitted.pickup.low === "not known") throw new NoAnswer("no interval");
      seen.fitted++;
      const inside = (value, { low, high }) =>
        (low === "no limit" || value >= low) && (high === "no limit" || value <= high);
      if (inside(pickup, fitted.pickup)) seen.pickup++;
      if (inside(tau, fitted.timeConstant)) seen.tau++;
      if (inside(sigma, fitted.scatter)) seen.sigma++;
      if (fitted.pickup.low === "no limit") seen.open++;
      const { low, high, from } = forecast(fitted, { current: asked, preload: 0 });
      if (from === "profile") seen.profile++;
      if (truth >= low && (high === "no limit" || truth <= high)) seen.next++;
      const promised = holdProbability(fitted, { current: asked, preload: 0 }, question);
      if (promised !== "not known") {
        seen.asked++;
        seen.promised += promised;
        if (truth > question) seen.held++;
      }
    } catch (thrown) {
      if (!(thrown instanceof NoAnswer)) throw thrown;
      seen.refused++;
    }
  }
  const { fitted } = seen;
  console.log(
    `${name.padEnd(30)} ${percent(seen.pickup, fitted)} ${percent(seen.tau, fitted)} ${percent(seen.sigma, fitted)}     ${percent(seen.next, fitted)}        ${percent(seen.profile, fitted)}   ${percent(seen.refused, sets)}    ${percent(seen.open, fitted)}      ${percent(seen.promised, seen.asked)} ${percent(seen.held, seen.asked)}`,
  );
});
