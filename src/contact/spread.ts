import { exceeds } from "../metrology/exceeds";
import { investigateAbove } from "./neta";

interface ComparedPole {
  /** Its resistance ÷ that of the lowest pole. */
  readonly ratio: number;
  readonly investigate: boolean;
}

/** The poles of one breaker in their order, Ω; undefined where a pole was not measured. */
export type PoleOhms = readonly (number | undefined)[];

/** Ω, the least of the poles that were measured. */
export const lowestPole = (poles: PoleOhms): number => Math.min(...poles.filter((ohms) => ohms !== undefined));

/**
 * The poles of one breaker compared with the lowest of them. Only what differs between the poles shows: a common current and a
 * common meter error cancel, and so does a fault that all poles share.
 */
export const poleSpread = (poles: PoleOhms): readonly (ComparedPole | undefined)[] => {
  const lowest = lowestPole(poles);
  return poles.map((ohms) => {
    if (ohms === undefined) return undefined;
    const ratio = ohms / lowest;
    return { ratio, investigate: exceeds(ratio, investigateAbove) };
  });
};
