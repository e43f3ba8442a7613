import type { Asked } from "./asked";
import { sameMultiple } from "./conditions";

type Region =
  | "holds"
  | "may hold or trip"
  | "trips, thermal"
  | "trips, thermal or magnetic"
  | "trips, magnetic"
  | "trips, magnetic not known";

/** What a sound breaker does at a steady current in the end, and by which release. */
export const region = (asked: Asked, current: number): Region => {
  const { shortest, longest } = asked.rangeAt(current);
  if (shortest.line === "holds") return "holds";
  const magnetic = asked.bench?.magnetic;
  const atLeast = (edge: number): boolean => current >= edge || sameMultiple(current, edge);
  if (magnetic && atLeast(magnetic.upper)) return "trips, magnetic";
  if (longest.seconds === Infinity) return "may hold or trip";
  if (!asked.bench) return "trips, thermal or magnetic";
  if (!magnetic) return "trips, magnetic not known";
  return current > magnetic.lower && !sameMultiple(current, magnetic.lower)
    ? "trips, thermal or magnetic"
    : "trips, thermal";
};
