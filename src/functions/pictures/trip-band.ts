import type { Line, Plot, Point } from "../../definition/plot";
import { say } from "../../metrology/say";
import type { Asked } from "../../trip/asked";

/** What the time axis shows at least. */
const usual = { from: 0.01, to: 20000 } as const;
const steps = 72;

/** Where a sound breaker trips, over the current: the band on log–log axes with what was asked or tested. */
export const bandPlot = (
  asked: Asked,
  title: string,
  asks: { current: number; points: readonly Point[]; lines?: readonly Line[] },
): Plot => {
  const { from, to, edges } = currentAxis(asked, [asks.current, ...asks.points.map(({ x }) => x)]);
  const times = asks.points.map(({ y }) => y);
  const seconds = { from: Math.min(usual.from, ...times), to: Math.max(usual.to, ...times) };
  const currents = Array.from({ length: steps + 1 }, (_, i) => from * (to / from) ** (i / steps));
  // Both sides of each edge, so that its step stands upright.
  for (const edge of edges) currents.push(edge * (1 - 1e-6), edge, edge * (1 + 1e-6));
  const samples = currents
    .filter((current) => current >= from && current <= to)
    .sort((a, b) => a - b)
    .flatMap((current) => {
      const { shortest, longest } = asked.rangeAt(current);
      const low = Math.min(seconds.to, Math.max(seconds.from, shortest.seconds));
      const high = Math.min(seconds.to, Math.max(seconds.from, longest.seconds));
      return [{ x: current, low, high }];
    });
  return {
    title,
    sentence: `Time to trip over the current of a sound breaker of ${say(asked.rating, "A")}: the band reaches the upper edge of the picture where it may hold for ever, and the lower edge where it may trip at once.`,
    x: { quantity: "current", unit: "A", scale: "log", from, to },
    y: { quantity: "time", unit: "s", scale: "log", ...seconds },
    bands: [{ name: "a sound breaker trips", samples }],
    lines: asks.lines,
    points: asks.points,
  };
};

const currentAxis = (
  { bench, rating, span }: Asked,
  shown: readonly number[],
): { from: number; to: number; edges: readonly number[] } => {
  if (!bench) return { from: span?.from ?? Math.min(...shown), to: span?.to ?? Math.max(...shown), edges: [] };
  const top = Math.max(bench.magnetic ? 1.5 * bench.magnetic.upper : 0, 10 * rating, 1.3 * Math.max(...shown));
  const edges = [
    bench.holdEdge,
    bench.tripEdge,
    ...(bench.magnetic ? [bench.magnetic.lower, bench.magnetic.upper] : []),
  ];
  return { from: 0.9 * Math.min(rating, ...shown), to: top, edges };
};
