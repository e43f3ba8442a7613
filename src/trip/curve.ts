import type { Asked } from "./asked";
import type { TripRange } from "./range";

/** The currents of a whole band for a chart: evenly spaced on a log axis, and both sides of each of its steps. */
export const curve = (
  asked: Asked,
  points: number,
): readonly { readonly current: number; readonly range: TripRange }[] => {
  const { rating, span, bench } = asked;
  const from = span?.from ?? rating;
  const to = span?.to ?? Math.max(bench?.magnetic ? 1.5 * bench.magnetic.upper : 0, 10 * rating);
  const currents = Array.from({ length: points }, (_, i) => from * (to / from) ** (i / (points - 1)));
  if (bench)
    for (const edge of [bench.holdEdge, bench.tripEdge, bench.magnetic?.lower, bench.magnetic?.upper])
      if (edge !== undefined && edge > from && edge < to) currents.push(edge, edge * (1 + 1e-6));
  return [...new Set(currents)]
    .sort((a, b) => a - b)
    .map((current) => ({ current, range: asked.rangeAt(Math.min(Math.max(current, from), to)) }));
};
