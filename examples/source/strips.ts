// Invented breakers. Nothing here was measured and nothing is anybody's product: each breaker is one first-order strip with a
// pickup, a time constant and a scatter, and a pole of some resistance, so that its trials hang together as real ones do.

export interface Strip {
  /** Multiple of the rating that it just carries for ever, with the air at `calibration`. */
  readonly pickup: number;
  /** s */
  readonly timeConstant: number;
  /** Standard deviation of ln(time). */
  readonly scatter: number;
  /** °C */
  readonly calibration: number;
  /** A from which the magnet trips it. */
  readonly magnet: number;
}

interface Shot {
  /** A; the rating, the test current, and what was carried for long before. */
  readonly rating: number;
  readonly current: number;
  readonly carried: number;
  /** °C */
  readonly air: number;
  /** s after which the tester switched off. */
  readonly watched: number;
}

/** A strip trips 80 K above its calibration, so warm air leaves it less to go. */
const tripRise = 80;

/** What the stopwatch shows, and whether the breaker had tripped by then. */
export const shoot = (
  strip: Strip,
  shot: Shot,
  chance: () => number,
): { time: number; outcome: "tripped" | "held" } => {
  const luck = normal(chance);
  if (shot.current > strip.magnet) return { time: roundTo(0.009 + 0.006 * chance(), 0.001), outcome: "tripped" };
  const pickup = strip.pickup ** 2 * ((strip.calibration + tripRise - shot.air) / tripRise);
  const square = (shot.current / shot.rating) ** 2;
  const start = (shot.carried / shot.rating) ** 2;
  const time =
    square > pickup
      ? strip.timeConstant * Math.log((square - start) / (square - pickup)) * Math.exp(strip.scatter * luck)
      : Infinity;
  if (time > shot.watched) return { time: shot.watched, outcome: "held" };
  return { time: roundTo(time, time < 10 ? 0.01 : time < 600 ? 0.1 : 1), outcome: "tripped" };
};

/** What the voltmeter shows across the pole, to a millivolt. */
export const drop = (milliohms: number, current: number, chance: () => number): number =>
  roundTo((current * milliohms * (1 + 0.006 * normal(chance))) / 1000, 0.001);

/** To a whole number of steps, without the digits that doubles add: 26.4 and not 26.400000000000002. */
const roundTo = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(3));

const normal = (chance: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

/** The same numbers from 0 to 1 at every run (a multiplicative congruential generator, 48271 modulo 2³¹ − 1). */
export const chances = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
};
