// What the formulas of breaker-study.xlsx must answer, from what is typed in it. Maximum likelihood by plain search: beside a pickup
// the other two have closed forms, because every hold of this log lies below any pickup that comes into question.

import { printedTests } from "./printed-tests.mjs";
import { rangeOf } from "./strips.mjs";
import { linesOf } from "./workbook.mjs";

/** Student's t for 97.5 % and 14 degrees of freedom, as tables print it (JCGM 100, table G.2, with more digits). */
const t14 = 2.144786687917804;

/** χ² for 95 % and one degree of freedom, as tables print it. */
const chiSquare95 = 3.841458820694124;

/** ln of how many time constants a strip of this pickup takes. */
const lnShape = ({ current, carried }, pickup) =>
  Math.log(Math.log((current ** 2 - carried ** 2) / (current ** 2 - pickup ** 2)));

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Beside a pickup: the likeliest ln(time constant), and the sum of squares about it. */
const beside = (trips, pickup) => {
  const ln = trips.map((trip) => Math.log(trip.time) - lnShape(trip, pickup));
  const lnTau = mean(ln);
  return { pickup, lnTau, squares: ln.reduce((sum, value) => sum + (value - lnTau) ** 2, 0) };
};

/** The least of a function with one valley, by thirds. */
const valley = (value, low, high) => {
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i++) {
    const [c, d] = [a + (b - a) / 3, b - (b - a) / 3];
    if (value(c) < value(d)) b = d;
    else a = c;
  }
  return (a + b) / 2;
};

/** Where a function that is below zero at `inside` and above at `outside` passes it. */
const edge = (value, inside, outside) => {
  let [a, b] = [inside, outside];
  for (let i = 0; i < 200; i++) {
    const middle = (a + b) / 2;
    if (value(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};

const learnt = (trials) => {
  const trips = trials.filter(({ outcome }) => outcome === "tripped");
  const longestHeld = Math.max(...trials.filter(({ outcome }) => outcome === "held").map(({ current }) => current));
  const lowestTrip = Math.min(...trips.map(({ current }) => current));
  const n = trips.length;
  const between = [longestHeld + 1e-6, lowestTrip - 1e-6];
  const pickup = valley((p) => beside(trips, p).squares, ...between);
  const { lnTau, squares } = beside(trips, pickup);
  const sigma = Math.sqrt(squares / n);
  // A limit lies where n·ln(squares ÷ least squares) has grown to n·ln(1 + t²/(n − 2)).
  const allowed = squares * (1 + t14 ** 2 / (n - 2));
  const pickupAt = (end) => edge((p) => beside(trips, p).squares - allowed, pickup, end);
  const besideTau = (tau) => {
    const sum = (p) => beside(trips, p).squares + n * (Math.log(tau) - beside(trips, p).lnTau) ** 2;
    return sum(valley(sum, ...between));
  };
  const tau = Math.exp(lnTau);
  const tauAt = (end) => edge((value) => besideTau(value) - allowed, tau, end);
  // The scatter's limits are those of the likelihood of a variance with n − 2 degrees of freedom, Bartlett's factor beside χ².
  const freedom = n - 2;
  const s = Math.sqrt(squares / freedom);
  const rise = (value) => freedom * (2 * Math.log(value / s) + (s / value) ** 2 - 1);
  const sigmaAt = (end) => edge((value) => rise(value) - chiSquare95 * (1 + 1 / (3 * freedom)), s, end);
  const fit = { trips, n, pickup, tau, sigma, squares, covariance: covarianceOf(trips, { pickup, lnTau, sigma }) };
  const limits = {
    pickup: between.map(pickupAt),
    tau: [tau / 2, tau * 2].map(tauAt),
    sigma: [sigma / 4, sigma * 4].map(sigmaAt),
  };
  if (!(limits.pickup[0] > longestHeld))
    throw new Error("A hold lies among the pickups: its part in the likelihood is missing here.");
  return { ...fit, limits, longestHeld, held: trials.length - n };
};

/** Of ln pickup and ln time constant: the inverse of the second differences of −ln likelihood. */
const covarianceOf = (trips, { pickup, lnTau, sigma }) => {
  const h = 1e-5;
  const value = (i, j) =>
    trips.reduce(
      (sum, trip) => sum + (Math.log(trip.time) - lnShape(trip, pickup * Math.exp(i * h)) - lnTau - j * h) ** 2,
      0,
    ) /
    (2 * sigma ** 2);
  const pp = (value(1, 0) - 2 * value(0, 0) + value(-1, 0)) / h ** 2;
  const tt = (value(0, 1) - 2 * value(0, 0) + value(0, -1)) / h ** 2;
  const pt = (value(1, 1) - value(1, -1) - value(-1, 1) + value(-1, -1)) / (4 * h ** 2);
  const determinant = pp * tt - pt ** 2;
  return { pp: tt / determinant, tt: pp / determinant, pt: -pt / determinant };
};

const studyAnswers = ({ n, held, pickup, tau, sigma, limits, covariance }) => {
  const row = (what, value, error = "", [low, high] = ["", ""]) => ({
    "What the trials say": what,
    Value: value,
    "Standard error": error,
    Low: low,
    High: high,
  });
  return [
    row("pickup", pickup, pickup * Math.sqrt(covariance.pp), limits.pickup),
    row("time constant", tau, tau * Math.sqrt(covariance.tt), limits.tau),
    row("scatter", sigma, sigma / Math.sqrt(2 * n), limits.sigma),
    row("scatter of one trial", sigma * Math.sqrt(n / (n - 2))),
    row("tripped", n),
    row("held", held),
    row("left out", 0),
    row("log-likelihood", -n * Math.log(sigma) - (n / 2) * (Math.log(2 * Math.PI) + 1)),
  ];
};

const cold = (current) => ({ current, carried: 0 });

/** Median, and the limits median·exp(∓ t·√(n/(n − 2))·√(σ² + variance of the curve)). */
const nextTrial = (current, { n, pickup, tau, sigma, covariance }) => {
  const h = 1e-6;
  const slope = (lnShape(cold(current), pickup * (1 + h)) - lnShape(cold(current), pickup * (1 - h))) / (2 * h);
  const variance = sigma ** 2 + covariance.tt + 2 * slope * covariance.pt + slope ** 2 * covariance.pp;
  const margin = t14 * Math.sqrt((n / (n - 2)) * variance);
  const median = tau * Math.exp(lnShape(cold(current), pickup));
  return [median * Math.exp(-margin), median, median * Math.exp(margin)];
};

/** Student's distribution function by Simpson's rule on its density, which is normalised the same way. */
const studentBelow = (freedom) => {
  const density = (x) => (1 + x ** 2 / freedom) ** (-(freedom + 1) / 2);
  const simpson = (from, to, steps = 400) => {
    const h = (to - from) / steps;
    let sum = density(from) + density(to);
    for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * density(from + i * h);
    return (sum * h) / 3;
  };
  const half = simpson(0, 60, 4000);
  return (x) => 0.5 + (Math.sign(x) * simpson(0, Math.min(60, Math.abs(x)))) / (2 * half);
};

/**
 * The probability that a trial still holds: over all pickups, weighed by Student's t of the signed root of the likelihood's drop,
 * of the share that is left by then beside each.
 */
const holding = (current, time, { trips, n, pickup, squares, longestHeld, limits }) => {
  if (current <= limits.pickup[0]) return 1;
  const weight = studentBelow(n - 2);
  const share = studentBelow(n - 1);
  const steps = 1500;
  const top = Math.min(...trips.map((trip) => trip.current)) - 1e-6;
  let [sum, before] = [0, 0];
  for (let i = 1; i <= steps; i++) {
    const p = longestHeld + ((i - 0.5) / steps) * (top - longestHeld);
    const end = beside(trips, longestHeld + (i / steps) * (top - longestHeld));
    const root = Math.sqrt((n - 2) * Math.max(0, end.squares / squares - 1));
    const now = i === steps ? 1 : weight(end.pickup < pickup ? -root : root);
    const here = beside(trips, p);
    const variance = here.squares / n;
    const spread = Math.sqrt((n / (n - 1)) * (variance + variance / n));
    const middle = here.lnTau + lnShape(cold(current), p);
    sum += (now - before) * (1 - share((Math.log(time) - middle) / spread));
    before = now;
  }
  return sum;
};

export const breakerStudy = async () => {
  const file = "breaker-study.xlsx";
  const trials = (await linesOf(file, "Study", "Trial")).map((line) => ({
    current: line["Current, A"],
    time: line["Time, s"],
    outcome: line.Outcome,
    carried: line["Carried before, A"] ?? 0,
  }));
  const fit = learnt(trials);
  const forecasts = (await linesOf(file, "Questions", "Next trial at, A")).map(({ "Next trial at, A": current }) => {
    const [low, median, high] = nextTrial(current, fit);
    const sound = rangeOf({ name: "C", kind: printedTests.C(20), rating: 20, current, air: 25 });
    return {
      "Next trial at, A": current,
      "Low, s": low,
      "Median, s": median,
      "High, s": high,
      "Any sound one, s": sound.shortest,
      "to, s": Number.isFinite(sound.longest) ? sound.longest : "no limit",
    };
  });
  const holds = (await linesOf(file, "Questions", "Does it hold, A")).map((line) => {
    const [current, time] = [line["Does it hold, A"], line["for, s"]];
    return { "Does it hold, A": current, "for, s": time, Probability: holding(current, time, fit) };
  });
  const starts = (await linesOf(file, "Questions", "Rides through")).map((line) => ({
    "Rides through": line["Rides through"],
    Running: fit.limits.pickup[0] / line["runs with, A"],
    Thermal: nextTrial(line["Starts with, A"], fit)[0] / line["lasts, s"],
    Magnetic: "not known",
    Peak: "not known",
    Verdict: "thermal rides through, magnetic not known",
  }));
  return {
    "breaker-study.starts.expected.csv": starts,
    "breaker-study.expected.csv": studyAnswers(fit),
    "breaker-study.forecast.expected.csv": forecasts,
    "breaker-study.holds.expected.csv": holds,
  };
};
