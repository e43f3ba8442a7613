import type { Plot, Point } from "../../definition/plot";
import { say } from "../../metrology/say";
import type { Fitted } from "../../thermal/fitted";
import { forecast } from "../../thermal/forecast";

const steps = 28;

/** A start against what one fitted breaker's next trip will do. */
export const fitPicture = (fitted: Fitted, start: Point): Plot => {
  const { pickup } = fitted;
  const x = { from: 0.95 * Math.min(pickup.value, start.x), to: 1.5 * Math.max(2 * pickup.value, start.x) };
  const y = { from: Math.min(0.1, start.y / 3), to: Math.max(2000, start.y * 3) };
  const inside = (time: number | string): number =>
    typeof time === "number" ? Math.min(y.to, Math.max(y.from, time)) : y.to;
  const samples = Array.from({ length: steps + 1 }, (_, i) => x.from * (x.to / x.from) ** (i / steps))
    .map((current) => ({ current, ...forecast(fitted, { current, preload: 0 }) }))
    .filter(({ low }) => low !== "not known")
    .map(({ current, low, high }) => ({ x: current, low: inside(low), high: inside(high) }));
  return {
    title: "The start against the breaker's own band",
    sentence: `The next trip of this breaker, 95 %, from cold; its pickup is ${say(pickup.value, "A")}.`,
    x: { quantity: "current", unit: "A", scale: "log", ...x },
    y: { quantity: "time", unit: "s", scale: "log", ...y },
    bands: samples.length > 1 ? [{ name: "the next trip, 95 %, from cold", samples }] : [],
    points: [start],
  };
};
