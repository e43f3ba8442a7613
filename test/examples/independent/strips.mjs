// What sound breakers may do, found by trying strips: every first-order strip that passes all the printed tests, each test run
// through by step responses, and the shortest and the longest that any of them takes. Nothing here is taken from src; where src
// follows the edges of the set in closed form, this scans pickups and halves intervals of the time constant.

/** Kelvin that a strip is above its calibration when it trips (common practice, no source). */
const tripRise = 80;

/** By how much the pickup moves with the air. */
const airFactor = (air, calibration) => (air === undefined ? 1 : Math.sqrt((calibration + tripRise - air) / tripRise));

/**
 * A strip is named by its gap: the square of the lowest trip multiple less that of its pickup, because a pickup just under the
 * lowest trip multiple has lost the digits of the difference. `above` is m² − pickup² with those digits kept.
 */
const above = (multiple, { gap, top }) => (multiple === top ? 0 : multiple ** 2 - top ** 2) + gap;
const pickupSquare = ({ gap, top }) => top ** 2 - gap;

/** Seconds until a strip trips at a steady multiple from a state, and for ever where it does not. */
const secondsToTrip = (strip, tau, multiple, state) => {
  const left = above(multiple, strip);
  if (state >= pickupSquare(strip)) return 0;
  if (left <= 0) return Infinity;
  // ln(1 + x), as the two may be nearly alike.
  return tau * Math.log1p((pickupSquare(strip) - state) / left);
};

/** Runs the stages of a test from cold; the time of the trip within the last stage (0 in an earlier one). */
const runTest = (strip, tau, stages) => {
  let state = 0;
  for (const { multiple, seconds } of stages.slice(0, -1)) {
    if (secondsToTrip(strip, tau, multiple, state) <= seconds) return 0;
    state = multiple ** 2 + (state - multiple ** 2) * Math.exp(-seconds / tau);
  }
  return secondsToTrip(strip, tau, stages.at(-1).multiple, state);
};

/** Time constants from a part of a nanosecond to a million years. */
const [quickest, slowest] = [1e-10, 1e13];

const halved = (passes, low, high) => {
  // `passes(low)` differs from `passes(high)`; where they part, on a scale of ratios.
  const atLow = passes(low);
  let [a, b] = [low, high];
  for (let i = 0; i < 80; i++) {
    const middle = Math.sqrt(a * b);
    if (passes(middle) === atLow) a = middle;
    else b = middle;
  }
  return Math.sqrt(a * b);
};

/** The time constants with which a strip of this pickup passes every test: from, to; undefined where there are none. */
const soundTaus = (strip, tests) => {
  let [from, to] = [0, Infinity];
  for (const { stages, notBefore, within } of tests) {
    if (notBefore !== undefined) {
      const holds = (tau) => runTest(strip, tau, stages) >= notBefore;
      from = Math.max(from, holds(quickest) ? 0 : halved(holds, quickest, slowest));
    } else {
      const trips = (tau) => runTest(strip, tau, stages) <= within;
      if (!trips(quickest)) return undefined;
      to = Math.min(to, trips(slowest) ? Infinity : halved(trips, quickest, slowest));
    }
  }
  return from <= to ? { from, to } : undefined;
};

const scanned = 1200;
const deepest = -600;

/** All sound strips on a scan of pickups from the hold multiple up to just under the lowest trip multiple. */
const soundStrips = ({ tests, hold }) => {
  const top = Math.min(...tests.filter(({ within }) => within).map(({ stages }) => stages.at(-1).multiple));
  const widest = Math.log(top ** 2 - hold ** 2);
  const at = (u) => {
    const strip = { gap: Math.exp(u), top };
    const taus = soundTaus(strip, tests);
    return taus && { u, strip, ...taus };
  };
  // Close under the trip multiple one step of the scan is a wide ratio, so half of it is spent on the first few.
  const us = Array.from({ length: scanned }, (_, i) => {
    const part = (2 * i) / scanned;
    return part < 1 ? widest - 12 * part : widest - 12 + (deepest - widest + 12) * (part - 1);
  });
  return { at, set: us.map(at).filter((found) => found !== undefined) };
};

/** The least (sign 1) or greatest (sign −1) of `value` over the set, with its neighbourhood searched more finely. */
const extreme = ({ at, set }, value, sign) => {
  const worth = (found) => (found ? sign * value(found) : Infinity);
  let best = 0;
  set.forEach((found, i) => {
    if (worth(found) < worth(set[best])) best = i;
  });
  let [from, to] = [set[Math.max(0, best - 1)].u, set[Math.min(set.length - 1, best + 1)].u];
  let least = worth(set[best]);
  for (let i = 0; i < 60; i++) {
    const [a, b] = [from + (to - from) / 3, to - (to - from) / 3];
    const [atA, atB] = [worth(at(a)), worth(at(b))];
    least = Math.min(least, atA, atB);
    if (atA < atB) to = b;
    else from = a;
  }
  return sign * least;
};

const known = new Map();

/** The strips that are sound in this air: the hold multiple of a standard that promises it in any air does not move with it. */
const stripsFor = (name, kind, hold) => {
  const key = `${name} ${JSON.stringify(kind.tests)} ${hold}`;
  if (!known.has(key)) known.set(key, soundStrips({ tests: kind.tests, hold }));
  return known.get(key);
};

const same = (a, b) => Math.abs(a - b) <= 1e-9 * b;
const atMost = (a, b) => a <= b || same(a, b);

/** Shortest and longest time at a current, and the edges that a verdict asks for. Amperes, °C, seconds. */
export const rangeOf = ({ name, kind, rating, current, carried = 0, air }) => {
  const factor = airFactor(air, kind.calibration);
  const promised = kind.holdsUpTo !== undefined && (air === undefined || air <= kind.holdsUpTo);
  const hold = promised ? kind.hold / factor : kind.hold;
  const holdEdge = kind.hold * (promised ? 1 : factor) * rating;
  const strips = stripsFor(name, kind, hold);
  const multiple = current / rating / factor;
  const start = (carried / rating / factor) ** 2;
  const printed = kind.tests.map(({ stages }) => stages.at(-1).multiple).find((m) => same(multiple, m));
  const asked = printed ?? multiple;
  const thermal = {
    shortest: extreme(strips, ({ strip, from }) => secondsToTrip(strip, from, asked, start), 1),
    longest: extreme(strips, ({ strip, to }) => secondsToTrip(strip, to, asked, start), -1),
  };
  return {
    factor,
    holdEdge,
    multiple,
    start,
    carried,
    thermal,
    ...edges({ kind, rating, current, holdEdge, factor, start, asked, thermal }),
  };
};

/** x² − 2x + 2 − 2e^−x: the heat of a ramp of one ampere a time constant, x time constants after its start. */
const rampHeat = (x) => (x < 0.01 ? x ** 3 / 3 - x ** 4 / 12 + x ** 5 / 60 : x ** 2 - 2 * x + 2 - 2 * Math.exp(-x));

/** The multiple at which a strip trips that is heated from cold by a current which rises by `rate` of the rating a second. */
const rampTrip = (strip, tau, rate) => {
  const tripped = (x) => (rate * tau) ** 2 * rampHeat(x) >= pickupSquare(strip);
  return rate * tau * halved(tripped, 1e-9, 1e9);
};

/** Between which currents a sound breaker trips while the current is turned up from nothing, A and A/s. */
export const rampOf = ({ name, kind, rating, rate }) => {
  const strips = stripsFor(name, kind, kind.hold);
  const perRating = rate / rating;
  const thermal = {
    lowest: rating * extreme(strips, ({ strip, from }) => rampTrip(strip, from, perRating), 1),
    highest: rating * extreme(strips, ({ strip, to }) => rampTrip(strip, to, perRating), -1),
  };
  const { lower, upper } = kind.magnetic;
  return { lowest: Math.min(thermal.lowest, lower), highest: Math.min(thermal.highest, upper) };
};

const edges = ({ kind, rating, current, holdEdge, factor, start, asked, thermal }) => {
  let { shortest, longest } = thermal;
  const { magnetic, floor, holdSeconds } = kind;
  if (atMost(current, holdEdge)) {
    const forEver = holdSeconds === undefined || atMost(current, rating * Math.min(1, factor));
    return { shortest: forEver ? Infinity : holdSeconds, longest: Infinity };
  }
  if (floor && start === 0 && shortest < floor.seconds) shortest = floor.seconds;
  if (magnetic && current > magnetic.lower && !same(current, magnetic.lower)) shortest = 0;
  // A test that is printed with just this start answers by itself.
  const own = kind.tests.find(
    ({ stages, within }) =>
      within && stages.length > 1 && stages.at(-1).multiple === asked && same(Math.sqrt(start), stages[0].multiple),
  );
  if (own) longest = own.within;
  if (magnetic && atMost(magnetic.upper, current)) longest = Math.min(longest, magnetic.seconds);
  return { shortest, longest };
};
