import { root } from "../metrology/root";

/**
 * The highest instantaneous current of an R–L circuit closed at the worst instant (voltage zero), as a multiple of the
 * r.m.s. current that flows once it has settled: √2 for power factor 1, 2√2 for power factor 0. From closing on,
 *
 *     i / (√2·I) = sin(x − φ) + sin φ · e^(−x / tan φ),   x = ωt,   cos φ = power factor,
 *
 * and the peak lies where the derivative, cos(x − φ) − cos φ · e^(−x / tan φ), is zero between φ and φ + π/2
 * (it is also zero at x = 0, where the current starts). The saturation of the iron that lets some motors and every
 * transformer draw more is not in it.
 */
export const firstPeakFactor = (powerFactor: number): number => {
  if (powerFactor === 1) return Math.SQRT2;
  const { sine, offset } = circuit(powerFactor);
  const early = earliness(powerFactor);
  return Math.SQRT2 * (Math.cos(early) + sine * offset(early));
};

/** The angle ωt after closing at which the first peak comes, rad: π/2 for power factor 1, π for power factor 0. */
export const firstPeakAngle = (powerFactor: number): number =>
  powerFactor === 1 ? Math.PI / 2 : Math.acos(powerFactor) + Math.PI / 2 - earliness(powerFactor);

/** i / (√2·I) at the angle x after closing at voltage zero. */
export const currentAfterClosing = (powerFactor: number, x: number): number => {
  const phi = Math.acos(powerFactor);
  return Math.sin(x - phi) + (powerFactor === 1 ? 0 : Math.sin(phi) * Math.exp(-x / Math.tan(phi)));
};

/** How far before φ + π/2, the crest of the sine alone, the peak comes: the falling offset pulls it forward. */
const earliness = (powerFactor: number): number =>
  root((z) => Math.sin(z) - powerFactor * circuit(powerFactor).offset(z), 0, Math.PI / 2);

const circuit = (powerFactor: number) => {
  const sine = Math.sqrt((1 - powerFactor) * (1 + powerFactor));
  const phi = Math.acos(powerFactor);
  return { sine, offset: (z: number) => Math.exp((-(phi + Math.PI / 2 - z) * powerFactor) / sine) };
};
