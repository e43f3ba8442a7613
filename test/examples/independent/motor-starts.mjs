// What the formulas of motor-starts.xlsx must answer, from what is typed in it.

import { codeLetters, fullLoad, preferredRatings, standardRatings } from "./motor-tables.mjs";
import { printedTests } from "./printed-tests.mjs";
import { rangeOf } from "./strips.mjs";
import { cellsOf, linesOf } from "./workbook.mjs";

/** The classical fourth-order step of dy/dx = slope(x, y). */
export const step = (slope, x, y, h) => {
  const a = slope(x, y);
  const b = slope(x + h / 2, y + (h * a) / 2);
  const c = slope(x + h / 2, y + (h * b) / 2);
  const d = slope(x + h, y + h * c);
  return y + (h * (a + 2 * b + 2 * c + d)) / 6;
};

/**
 * First peak ÷ r.m.s. of a circuit of resistance and reactance that is closed as the voltage passes zero: its differential equation
 * followed in ten thousand steps of a cycle.
 */
const firstPeak = (powerFactor) => {
  const [resistance, reactance] = [powerFactor, Math.sqrt(1 - powerFactor ** 2)];
  const slope = (x, i) => (Math.SQRT2 * Math.sin(x) - resistance * i) / reactance;
  const h = (2 * Math.PI) / 10000;
  let [current, peak] = [0, 0];
  for (let n = 0; n < 10000; n++) {
    current = step(slope, n * h, current, h);
    peak = Math.max(peak, current);
  }
  return peak;
};

/** The smallest rating that carries the motor, is slow enough, and whose magnet stays put even at a peak of 2√2 times the start. */
const smallest = (name, { start, seconds, running }) =>
  preferredRatings.find((rating) => {
    const kind = printedTests[name](rating);
    const { thermal } = rangeOf({ name, kind, rating, current: start });
    return kind.hold * rating >= running && thermal.shortest >= seconds && kind.magnetic.lower >= 2 * start;
  });

export const machineAnswers = (line) => {
  const [hp, volts, phases, letter] = ["Power, hp", "Supply, V", "Phases", "Code letter"].map(
    (heading) => line[heading],
  );
  const full = fullLoad[phases][hp];
  const [low, high] = codeLetters[letter].map(
    (perHp) => (1000 * perHp * hp) / (volts * (phases === 3 ? Math.sqrt(3) : 1)),
  );
  const factor = firstPeak(line["Power factor"]);
  return {
    Machine: line.Machine,
    "Full load, A": full,
    "Locked, low, A": low,
    "Locked, high, A": high,
    "First peak, A": factor * high,
    "Peak ÷ r.m.s.": factor,
    // 430.52(C)(1): 250 %, and 400 % where the motor will not start otherwise (up to 100 A).
    "Ceiling, A": 2.5 * full,
    "Next size, A": standardRatings.find((rating) => rating >= 2.5 * full),
    "Exception, A": 4 * full,
    "Smallest C, A": smallest("C", { start: high, seconds: line["Start lasts, s"], running: full }),
    "Smallest D, A": smallest("D", { start: high, seconds: line["Start lasts, s"], running: full }),
  };
};

export const startAnswers = (line, machines) => {
  const machine = machines.find(({ Machine }) => Machine === line.Machine);
  const { "Locked, high, A": start, "Full load, A": running, "Peak ÷ r.m.s.": factor } = machine;
  const seconds = machine["Start lasts, s"];
  const [rating, name] = [line["Breaker, A"], line.Characteristic];
  const kind = printedTests[name](rating);
  const range = rangeOf({ name, kind, rating, current: start });
  const lower = kind.magnetic?.lower;
  const margins = [
    (kind.hold * rating) / running,
    range.thermal.shortest / seconds,
    ...(lower ? [lower / start, (Math.SQRT2 * lower) / (factor * start)] : ["not known", "not known"]),
  ];
  const mustTrip = seconds > range.longest || start >= (kind.magnetic?.upper ?? Infinity);
  const verdict = mustTrip
    ? "trips"
    : margins.some((margin) => margin < 1)
      ? "may trip"
      : lower
        ? "rides through"
        : "thermal rides through, magnetic not known";
  return {
    Machine: line.Machine,
    "Breaker, A": rating,
    Characteristic: name,
    "Starts with, A": start,
    Running: margins[0],
    Thermal: margins[1],
    Magnetic: margins[2],
    Peak: margins[3],
    Verdict: verdict,
  };
};

/** State of a strip after some seconds of a current, from its differential equation in small steps; 1 is the trip. */
const heated = (state, { current, seconds, pickup, tau }) => {
  const slope = (_, s) => ((current / pickup) ** 2 - s) / tau;
  const steps = 400;
  let s = state;
  for (let n = 0; n < steps; n++) s = step(slope, 0, s, seconds / steps);
  return s;
};

/** States at the end of one start after another. */
const afterStarts = (count, { start, startSeconds, running, pickup, tau, period }) => {
  const states = [];
  let state = 0;
  for (let n = 0; n < count; n++) {
    state = heated(state, { current: start, seconds: startSeconds, pickup, tau });
    states.push(state);
    state = heated(state, { current: running, seconds: period - startSeconds, pickup, tau });
  }
  return states;
};

/** The shortest period at which a hundred starts do not reach the trip, halved in. */
const shortestPeriod = (case_) => {
  let [trips, holds] = [case_.startSeconds, 3600];
  for (let n = 0; n < 40; n++) {
    const period = (trips + holds) / 2;
    if (afterStarts(100, { ...case_, period }).some((state) => state >= 1)) trips = period;
    else holds = period;
  }
  return holds;
};

export const motorStarts = async () => {
  const typed = await linesOf("motor-starts.xlsx", "Machines", "Machine");
  const answers = typed.map(machineAnswers);
  const machines = typed.map((line, i) => ({ ...line, ...answers[i] }));
  const starts = (await linesOf("motor-starts.xlsx", "Starts", "Machine")).map((line) => startAnswers(line, machines));
  const [running, pickup, tau, period] = await cellsOf("motor-starts.xlsx", "Again and again", [
    "B5",
    "B6",
    "B7",
    "B8",
  ]);
  const extractor = machines.find(({ Machine }) => Machine === "dust extractor");
  const again = {
    start: extractor["Locked, high, A"],
    startSeconds: extractor["Start lasts, s"],
    ...{ running, pickup, tau, period },
  };
  return {
    "motor-starts.expected.csv": starts,
    "motor-starts.machines.expected.csv": answers,
    "motor-starts.again.expected.csv": [
      ...afterStarts(7, again).map((state, i) => ({ Start: i + 1, "State (1 trips)": state })),
      { Start: "starts per hour", "State (1 trips)": 3600 / shortestPeriod(again) },
    ],
  };
};
