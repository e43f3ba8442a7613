// What the tables of lessons.xlsx must answer, from what is typed in it.

import { balanced } from "./cabinet.mjs";
import { machineAnswers, startAnswers, step } from "./motor-starts.mjs";
import { rerated } from "./panel-estimate.mjs";
import { lossLimit, printedTests } from "./printed-tests.mjs";
import { rampOf, rangeOf } from "./strips.mjs";
import { besideLabels, linesOf } from "./workbook.mjs";

const file = "lessons.xlsx";
const within = (seconds, forEver) => (Number.isFinite(seconds) ? seconds : forEver);
const times = ({ shortest, longest }) => ({
  "Shortest, s": within(shortest, "holds"),
  "Longest, s": within(longest, "no limit"),
});

const doneBy = ({ shortest, longest }, { lower, upper }, current) => {
  if (shortest === Infinity) return "holds";
  if (longest === Infinity) return "may hold or trip";
  if (current <= lower) return "trips, thermal";
  return current < upper ? "trips, thermal or magnetic" : "trips, magnetic";
};

const twoMechanisms = async () => {
  const sheet = "1 Two mechanisms";
  const [rating, name] = await besideLabels(file, sheet, ["Rating, A", "Characteristic"]);
  const kind = printedTests[name](rating);
  return {
    "lessons.two-mechanisms.expected.csv": (await linesOf(file, sheet, "Current, A")).map(
      ({ "Current, A": current }) => {
        const range = rangeOf({ name, kind, rating, current });
        return {
          "Current, A": current,
          "× rating": current / rating,
          ...times(range),
          "What a sound one does": doneBy(range, kind.magnetic, current),
        };
      },
    ),
    "lessons.letters.expected.csv": (await linesOf(file, sheet, "Letter")).map(({ Letter }) => {
      const { lower, upper } = printedTests[Letter](rating).magnetic;
      return { Letter, "Magnet not to, A": lower, "Magnet from, A": upper };
    }),
  };
};

const holdAndTrip = async () => {
  const sheet = "2 Why 1.13 and 1.45";
  const [rating, name] = await besideLabels(file, sheet, ["Rating, A", "Characteristic"]);
  const kind = printedTests[name](rating);
  return {
    "lessons.hold-and-trip.expected.csv": (await linesOf(file, sheet, "Test")).map((line) => {
      const [current, carried] = [line["× rating"] * rating, line["Carried before, ×"] * rating];
      const range = rangeOf({ name, kind, rating, current, carried });
      return {
        Test: line.Test,
        "Current, A": current,
        "Carried, A": carried,
        ...times(range),
        "What a sound one does": doneBy(range, kind.magnetic, current),
      };
    }),
  };
};

/** When a strip trips under a rising current, from its differential equation in small steps; the last one is halved in. */
const rampedTrip = ({ rate, pickup, tau }) => {
  const slope = (t, s) => (((rate * t) / pickup) ** 2 - s) / tau;
  const h = tau / 500;
  let [t, s] = [0, 0];
  for (let next = step(slope, t, s, h); next < 1; next = step(slope, t, s, h)) [t, s] = [t + h, next];
  let [low, high] = [0, h];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (step(slope, t, s, middle) < 1) low = middle;
    else high = middle;
  }
  return t + low;
};

const slowRamp = async () => {
  const sheet = "3 The slow ramp";
  const [rating, name, pickup, tau] = await besideLabels(file, sheet, [
    "Rating, A",
    "Characteristic",
    "One breaker's pickup, A",
    "Its time constant, s",
  ]);
  const kind = printedTests[name](rating);
  return {
    "lessons.slow-ramp.expected.csv": (await linesOf(file, sheet, "Turned up by, A/s")).map((line) => {
      const rate = line["Turned up by, A/s"];
      const { lowest, highest } = rampOf({ name, kind, rating, rate });
      const seconds = rampedTrip({ rate, pickup, tau });
      return {
        "Turned up by, A/s": rate,
        "Any sound one: from, A": lowest,
        "to, A": highest,
        "This one: after, s": seconds,
        "at, A": rate * seconds,
        "Above its pickup": (rate * seconds) / pickup - 1,
      };
    }),
  };
};

const hotAndCold = async () => {
  const sheet = "4 Hot and cold";
  const [rating, name, current, tau] = await besideLabels(file, sheet, [
    "Rating, A",
    "Characteristic",
    "Test current, A",
    "Time constant, s",
  ]);
  const kind = printedTests[name](rating);
  return {
    "lessons.hot-and-cold.expected.csv": (await linesOf(file, sheet, "Air, °C")).map((line) => {
      const [air, carried] = [line["Air, °C"], line["Carried before, A"]];
      return {
        "Air, °C": air,
        "Carried before, A": carried,
        "Rating there, A": rerated(rating, air),
        ...times(rangeOf({ name, kind, rating, current, carried, air })),
      };
    }),
    // By the same share in equal times: after one time constant e^−1 is left.
    "lessons.rest.expected.csv": (await linesOf(file, sheet, "Of the heat is left")).map((line) => ({
      "Of the heat is left": line["Of the heat is left"],
      "after a rest of, s": -tau * Math.log(line["Of the heat is left"]),
    })),
  };
};

const dropAndWatts = async () => {
  const sheet = "5 Drop and watts";
  const [rating] = await besideLabels(file, sheet, ["Rating, A"]);
  const limit = lossLimit(rating);
  const poles = (await linesOf(file, sheet, "Pole of a three-pole")).map((line) => ({
    ...line,
    ohms: line["its drop, V"] / line["at, A"],
  }));
  const lowest = Math.min(...poles.map(({ ohms }) => ohms));
  return {
    "lessons.drop.expected.csv": (await linesOf(file, sheet, "Measured at, A")).map((line) => {
      const [current, drop] = [line["Measured at, A"], line["Drop, V"]];
      const atRating = current * drop * (rating / current) ** 2;
      return {
        "Measured at, A": current,
        "Drop, V": drop,
        "Heat, W": current * drop,
        Ω: drop / current,
        "Share of limit": atRating / limit,
        "Heat at rating, W": atRating,
        Finding: atRating > limit ? "above the limit" : "within the limit",
      };
    }),
    // Above 1.5 times the lowest pole: investigate.
    "lessons.poles.expected.csv": poles.map(({ ohms, ...line }) => ({
      "Pole of a three-pole": line["Pole of a three-pole"],
      "its Ω": ohms,
      "÷ lowest pole": ohms / lowest,
      Compared: ohms === lowest ? "lowest" : ohms / lowest > 1.5 ? "investigate" : "alike",
    })),
  };
};

const motorStart = async () => {
  const sheet = "6 A motor start";
  const machines = (await linesOf(file, sheet, "Machine")).map((line) => ({ ...line, ...machineAnswers(line) }));
  const breakers = await linesOf(file, sheet, "Breaker, A");
  return {
    "lessons.machines.expected.csv": machines.map((machine) => ({
      Machine: machine.Machine,
      "Runs with, A": machine["Full load, A"],
      "Starts: low, A": machine["Locked, low, A"],
      "Starts: high, A": machine["Locked, high, A"],
      "First peak, A": machine["First peak, A"],
      "Peak ÷ r.m.s.": machine["Peak ÷ r.m.s."],
    })),
    // Held against the first machine.
    "lessons.motor-start.expected.csv": breakers.map((breaker) => {
      const {
        Machine,
        "Starts with, A": _,
        ...answers
      } = startAnswers({ ...breaker, Machine: machines[0].Machine }, machines);
      return answers;
    }),
  };
};

const warmPanel = async () => {
  const sheet = "7 A warm panel";
  const [height, width, depth, room, rating] = await besideLabels(file, sheet, [
    "Height, m",
    "Width, m",
    "Depth, m",
    "Room, °C",
    "Rating, A",
  ]);
  return {
    "lessons.loss.expected.csv": (await linesOf(file, sheet, "Loss at rating, W")).map((line) => ({
      "Loss at rating, W": line["Loss at rating, W"],
      "Load, A": line["Load, A"],
      "Its heat, W": line["Loss at rating, W"] * (line["Load, A"] / rating) ** 2,
    })),
    "lessons.warm-panel.expected.csv": (await linesOf(file, sheet, "All heat inside, W")).map((line) => {
      const rise = balanced({ height, width, depth }, line["All heat inside, W"], room);
      return {
        "All heat inside, W": line["All heat inside, W"],
        "Warmer by, K": rise,
        "at the top, K": "not known",
        "Inside, °C": room + rise,
        "Rating there, A": rerated(rating, room + rise),
      };
    }),
  };
};

/** The part of a normal distribution below z standard deviations, by Simpson's rule on its density. */
const normalBelow = (z) => {
  const [from, steps] = [-9, 4000];
  const h = (z - from) / steps;
  const density = (x) => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(from) + density(z);
  for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * density(from + i * h);
  return (sum * h) / 3;
};

const howSure = async () => {
  const sheet = "8 How sure are we";
  const [rating, ...meters] = await besideLabels(file, sheet, [
    "Rating, A",
    "Clamp: % of reading",
    "Clamp: counts",
    "Clamp: one count, A",
    "Voltmeter: % of reading",
    "Voltmeter: counts",
    "Voltmeter: one count, V",
  ]);
  const limit = lossLimit(rating);
  const off = (reading, [percent, counts, count]) => (percent / 100) * reading + counts * count;
  return {
    "lessons.how-sure.expected.csv": (await linesOf(file, sheet, "Reading, A")).map((line) => {
      const [current, drop] = [line["Reading, A"], line["Reading, V"]];
      const [offA, offV] = [off(current, meters.slice(0, 3)), off(drop, meters.slice(3))];
      // Anything within the limit of error is as likely: ÷ √3. A product's relative uncertainties add in squares.
      const [uA, uV] = [offA, offV].map((error) => error / Math.sqrt(3));
      const watts = current * drop;
      const u = watts * Math.hypot(uA / current, uV / drop);
      const verdict =
        watts + 2 * u < limit ? "conforms" : watts - 2 * u > limit ? "does not conform" : "too close to call";
      return {
        "Reading, A": current,
        "Reading, V": drop,
        "Off by, A": offA,
        "u, A": uA,
        "Off by, V": offV,
        "u, V": uV,
        "Heat, W": watts,
        "u, W": u,
        "± 95 %, W": 2 * u,
        Probability: normalBelow((limit - watts) / u),
        Verdict: verdict,
      };
    }),
  };
};

export const lessons = async () => {
  const all = [twoMechanisms, holdAndTrip, slowRamp, hotAndCold, dropAndWatts, motorStart, warmPanel, howSure];
  return Object.assign({}, ...(await Promise.all(all.map((lesson) => lesson()))));
};
