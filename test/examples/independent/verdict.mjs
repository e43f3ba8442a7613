// The verdict on one trial, from the range of strips.mjs and the reach of the printed tests: a trip limit holds at every higher
// current (warmer start, warmer air), a hold time at every lower one (from cold, in cooler air).

const same = (a, b) => Math.abs(a - b) <= 1e-9 * b;
const atMost = (a, b) => a <= b || same(a, b);

/** Seconds at four significant figures and whole seconds as they are, as the verdicts say them. */
const said = (seconds) => `${Number.isInteger(seconds) ? seconds : Number(seconds.toPrecision(4))} s`;

const holdLimits = ({ kind, air, carried }) => {
  if (carried > 0 || (air ?? 0) > (kind.holdsUpTo ?? kind.calibration)) return [];
  const forEver = { multiple: kind.holdSeconds === undefined ? kind.hold : 1, seconds: Infinity };
  const hour = kind.holdSeconds === undefined ? [] : [{ multiple: kind.hold, seconds: kind.holdSeconds }];
  const printed = kind.tests
    .filter((test) => test.printed && test.notBefore !== undefined)
    .map(({ stages, notBefore }) => ({ multiple: stages[0].multiple, seconds: notBefore }));
  return [forEver, ...hour, ...printed, ...(kind.floor ? [kind.floor] : [])];
};

const tripLimits = ({ kind, rating, air, carried, current }) => [
  ...(kind.magnetic && atMost(kind.magnetic.upper, current) ? [kind.magnetic.seconds] : []),
  ...(air !== undefined && air < kind.calibration ? [] : kind.tests)
    .filter(({ stages, within }) => within && atMost(stages.at(-1).multiple, current / rating))
    .filter(({ stages }) => stages.length === 1 || atMost(stages[0].multiple, carried / rating))
    .map(({ within }) => within),
];

/** `{ verdict, why }`, where why is how its sentence begins. */
export const verdictOf = (trial, { shortest, longest, holdEdge }) => {
  const { current, rating, time, outcome, kind } = trial;
  if (outcome === "tripped" && time < shortest) {
    const limit = holdLimits(trial).find(
      ({ multiple, seconds }) => atMost(current / rating, multiple) && time < seconds,
    );
    return limit ? { verdict: "early", why: "beyond a printed limit" } : outside;
  }
  if (time > longest) {
    const printed = tripLimits(trial).some((within) => time > within);
    const why = printed ? "beyond a printed limit" : outside.why;
    if (outcome === "held") return { verdict: "did not trip in time", why };
    return printed ? { verdict: "late", why } : outside;
  }
  if (outcome === "tripped") return { verdict: "in range", why: `tripped after ${said(time)}` };
  const why = `held for ${said(time)}`;
  if (Number.isFinite(longest)) return { verdict: `undecided until ${said(longest)}`, why };
  if (kind.holdSeconds !== undefined && atMost(current, holdEdge) && time < kind.holdSeconds)
    return { verdict: `undecided until ${said(kind.holdSeconds)}`, why };
  return { verdict: "in range", why };
};

const outside = { verdict: "outside the computed band", why: "outside the computed band" };
