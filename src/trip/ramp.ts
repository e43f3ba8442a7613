import { rampTrip } from "../thermal/ramp";
import type { Bench } from "./conditions";

/** A current turned up by hand: stepped to `from` A at time zero, then `rate` A/s. */
interface HandTurned {
  readonly rate: number;
  readonly from: number;
}

/** Between which currents, A, a sound breaker trips when the current is turned up evenly, cold or from its preload. */
export const rampRange = (bench: Bench, { rate, from }: HandTurned): { lowest: number; highest: number } => {
  const { envelope, magnetic, rating, factor, start } = bench;
  // In multiples at calibration temperature, as the bodies are told.
  const unit = rating * factor;
  const scaled = { rate: rate / unit, from: from / unit };
  // A document without a minimum admits strips that do not lag at all: they trip at their pickup.
  const tripCurrent = (pickup: number, timeConstant: number): number =>
    Math.max(from, unit * (timeConstant === 0 ? pickup : rampTrip({ pickup, timeConstant }, scaled, start).current));
  const [lowest, highest] = [envelope.least(tripCurrent), envelope.most(tripCurrent)];
  return {
    lowest: magnetic ? Math.max(from, Math.min(lowest, magnetic.lower)) : lowest,
    highest: magnetic ? Math.max(from, Math.min(highest, magnetic.upper)) : highest,
  };
};
