import type { Asked } from "../trip/asked";
import { sameMultiple } from "../trip/conditions";
import { firstPeakFactor } from "./first-peak";

/** A motor or compressor start, as the breaker sees it. */
export interface Start {
  /** A r.m.s. while it starts */
  readonly current: number;
  /** s until it runs */
  readonly seconds: number;
  /** A r.m.s. once it runs */
  readonly running: number;
  /** cos φ while it starts; left out: the worst first peak, 2√2 times the current */
  readonly powerFactor?: number;
}

/** Four ratios, each good above 1; undefined: not known from what was given; Infinity: the start is carried for ever. */
export interface Margin {
  readonly running: number | undefined;
  readonly thermal: number;
  readonly magnetic: number | undefined;
  readonly peak: number | undefined;
  readonly verdict: MarginVerdict;
}

export type MarginVerdict = "rides through" | "thermal rides through, magnetic not known" | "may trip" | "trips";

/** Whether a sound breaker rides through a start: what it may do at its worst decides, and what it must do says `trips`. */
export const startMargin = (asked: Asked, start: Start): Margin => {
  const { bench } = asked;
  const { shortest, longest } = asked.rangeAt(start.current);
  const lower = bench?.magnetic?.lower;
  const running = bench && bench.holdEdge / start.running;
  // The magnetic release has margins of its own; here the strip alone is asked.
  const thermal = (shortest.line === "magnetic" ? stripAlone(asked, start.current) : shortest.seconds) / start.seconds;
  const magnetic = lower && lower / start.current;
  const peak = lower && (lower * Math.SQRT2) / (firstPeakFactor(start.powerFactor ?? 0) * start.current);
  const margins = { running, thermal, magnetic, peak };
  return { ...margins, verdict: verdictOf(asked, start, margins, longest.seconds) };
};

/** s, the shortest time of the strip without the magnetic release. */
const stripAlone = ({ bench }: Asked, current: number): number => {
  if (!bench) return 0;
  if (!bench.ratedClass.hold) return 0;
  return bench.envelope.shortest((current / bench.rating / bench.factor) ** 2, bench.start).seconds;
};

const verdictOf = (
  { bench }: Asked,
  start: Start,
  { running, thermal, magnetic, peak }: Omit<Margin, "verdict">,
  longest: number,
): MarginVerdict => {
  const atLeast = (value: number, edge: number | undefined): boolean =>
    edge !== undefined && (value >= edge || sameMultiple(value, edge));
  // With a magnetic trip the longest time is its own printed one, so the strip's and the magnet's "must" are both in it.
  if (
    start.seconds > longest ||
    atLeast(start.current, bench?.magnetic?.upper) ||
    atLeast(start.running, bench?.tripEdge)
  )
    return "trips";
  if ([running, thermal, magnetic, peak].some((ratio) => ratio !== undefined && ratio < 1)) return "may trip";
  return magnetic === undefined ? "thermal rides through, magnetic not known" : "rides through";
};
