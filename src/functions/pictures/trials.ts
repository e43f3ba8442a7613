import type { Band, Plot } from "../../definition/plot";
import { say } from "../../metrology/say";
import type { Fitted } from "../../thermal/fitted";
import { forecast } from "../../thermal/forecast";
import type { Trial } from "../../thermal/trial";
import type { Asked } from "../../trip/asked";
import { sayTrial } from "../arguments/trials";

const steps = 28;

/** Trials and the curve fitted to them, with its prediction band, and the band of the kind of breaker behind if that is known. */
export const trialsPicture = (fitted: Fitted, trials: readonly Trial[], asked?: Asked): Plot => {
  const currents = trials.map(({ current }) => current);
  const times = trials.map(({ seconds }) => seconds);
  const x = { from: 0.95 * Math.min(fitted.pickup.value, ...currents), to: 1.15 * Math.max(...currents) };
  const y = { from: 0.4 * Math.min(...times), to: 3 * Math.max(...times) };
  const inside = (time: number | string): number =>
    typeof time === "number" ? Math.min(y.to, Math.max(y.from, time)) : y.to;
  const at = Array.from({ length: steps + 1 }, (_, i) => x.from * (x.to / x.from) ** (i / steps));
  // Close above the pickup the curve stands upright: it is sampled towards it.
  for (let i = 1; i < 8; i++) at.push(fitted.pickup.value * (1 + 0.2 * 3 ** -i));
  const shots = at
    .filter((current) => current >= x.from && current <= x.to)
    .sort((a, b) => a - b)
    .map((current) => ({ current, ...forecast(fitted, { current, preload: 0 }) }));
  const known = shots.filter(({ low }) => low !== "not known");
  const bands: Band[] = [];
  if (asked) {
    const samples = shots.flatMap(({ current }) => {
      if (asked.span && (current < asked.span.from || current > asked.span.to)) return [];
      const { shortest, longest } = asked.rangeAt(current);
      return [{ x: current, low: inside(shortest.seconds), high: inside(longest.seconds) }];
    });
    if (samples.length > 1) bands.push({ name: "a sound breaker trips", samples });
  }
  if (known.length > 1)
    bands.push({
      name: "the next trial, 95 %, from cold",
      samples: known.map(({ current, low, high }) => ({ x: current, low: inside(low), high: inside(high) })),
    });
  return {
    title: "The trials and what they tell",
    sentence: `Time over current of ${fitted.tripped} trips and ${fitted.held} holds; the fitted curve stands upright at the pickup of ${say(fitted.pickup.value, "A")}.`,
    x: { quantity: "current", unit: "A", scale: "log", ...x },
    y: { quantity: "time", unit: "s", scale: "log", ...y },
    bands,
    lines: [
      {
        name: "median, from cold",
        role: "course",
        samples: shots
          .filter(({ median }) => typeof median === "number" && median >= y.from && median <= y.to)
          .map(({ current, median }) => ({ x: current, y: Number(median) })),
      },
    ],
    points: trials.map((trial) => ({
      name: sayTrial(trial),
      role: trial.held ? "held" : "tripped",
      x: trial.current,
      y: trial.seconds,
    })),
  };
};
