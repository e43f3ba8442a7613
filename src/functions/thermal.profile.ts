import { define } from "../definition/define";
import { optional, word } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say, sayNumber } from "../metrology/say";
import { modelCautions, thermalEquation } from "../thermal/model";
import { courseOf } from "../thermal/profile";
import { heatWithin, type Segment } from "../thermal/segment";
import { pickup, startState, timeConstant } from "./arguments/body";
import { currents, type Profile, profileOf, segmentsOf, times } from "./arguments/profile";
import { statePicture } from "./pictures/state";

const between = optional(
  word(
    "what happens between two rows: “step” keeps the current until the next time, “ramp” runs straight to the next current",
    ["step", "ramp"],
  ),
  "step",
);

interface Asked extends Profile {
  readonly pickup: number;
  readonly timeConstant: number;
  readonly start?: number;
  readonly between?: "step" | "ramp";
}

/** The last stretch that has begun by then; at a jump several begin at once. */
const stretchAt = (starts: readonly number[], seconds: number): number => {
  let [from, to] = [0, starts.length - 1];
  while (to - from > 1) {
    const middle = (from + to) >> 1;
    if ((starts[middle] as number) <= seconds) from = middle;
    else to = middle;
  }
  return from;
};

/** No picture is so wide that more ends of stretches could be told apart in it. */
const mostDrawn = 2000;

const drawn = (starts: readonly number[]): readonly number[] => {
  const every = Math.ceil(starts.length / mostDrawn);
  return every > 1 ? starts.filter((_, i) => i % every === 0) : starts;
};

/** Time of the trip on the profile's own clock, and the states row by row. */
const run = (given: Asked) => {
  const profile = profileOf(given);
  const segments = segmentsOf(profile, given.between ?? "step");
  const course = courseOf(given, segments, (given.start ?? 0) * given.pickup ** 2);
  const begin = profile.times[0] as number;
  const states = profile.times.map((_, i) => (course.heats[i] ?? Infinity) / given.pickup ** 2);
  return { profile, segments, states, begin, course };
};

export default define({
  name: "THERMAL.PROFILE",
  summary:
    "What one breaker's bimetal goes through while a current runs its course: the thermal state row by row, and whether it trips.",
  parameters: { times, currents, pickup, timeConstant, start: startState, between },
  results: [
    {
      name: "time",
      unit: "s",
      meaning: "the time of each row; in the last row the trip time on the same clock, or “holds”",
    },
    {
      name: "state",
      unit: "",
      meaning: "thermal state at that time, “tripped” after the trip; in the last row the highest state, 1 = trips",
    },
  ],
  answers: "rows",
  sources: [thermalEquation],
  cautions: modelCautions,
  examples: [
    {
      cells: [[[0], [20], [50], [250]], [[40], [0], [40], [0]], 19, 90],
      gives: [
        [0, 0],
        [20, 0.883158325022458],
        [50, 0.632810592072494],
        [250, "tripped"],
        [59.14767239192497, 1],
      ],
      worked:
        "mpmath 1.2 and scipy 1.10 solve_ivp: 40 A for 20 s, 30 s off, 40 A again; heats 318.820 and 228.445 A² of 361 A²",
    },
    {
      cells: [[[0], [60], [120], [130]], [[0], [28.7047], [0], [0]], 20, 40, null, "ramp"],
      gives: [
        [0, 0],
        [60, 0.73583243046675],
        [120, 0.51419202511632],
        [130, 0.40045315180966],
        ["holds", 0.9999285455581389],
      ],
      worked:
        "mpmath 1.2 and scipy 1.10 solve_ivp: a triangle of current 1 mA short of tripping; the peak lies in its falling half",
    },
  ],
  calculate: (given) => {
    const { profile, states, begin, course } = run(given);
    const rows = profile.times.map((time, i) => [time, states[i] === Infinity ? "tripped" : (states[i] as number)]);
    const trips = course.tripSeconds < Infinity;
    return [...rows, trips ? [begin + course.tripSeconds, 1] : ["holds", course.highest / given.pickup ** 2]];
  },
  explain: (given) => {
    const { profile, states, begin, course } = run(given);
    const trips = course.tripSeconds < Infinity;
    const highest = course.highest / given.pickup ** 2;
    const hottest = say(begin + course.highestSeconds, "s");
    const ramps = given.between === "ramp";
    const last = states.filter((state) => state < Infinity).length - 1;
    return {
      steps: [
        {
          sentence: "Heat grows with the square of the current and leaks away with the time constant",
          tex: String.raw`\tau\,\frac{\mathrm{d}s}{\mathrm{d}t} = \left(\frac{i(t)}{${tex(given.pickup)}\ \mathrm{A}}\right)^2 - s,\qquad \tau = ${tex(given.timeConstant)}\ \mathrm{s}`,
          plain: `τ·ds/dt = (i/${say(given.pickup, "A")})² − s, τ = ${say(given.timeConstant, "s")}; trips at s = 1`,
        },
        {
          sentence: `Each of the ${profile.times.length - 1} stretches of ${ramps ? "straight" : "steady"} current is solved exactly and hands its state on to the next`,
          plain: `${states
            .slice(0, Math.min(last + 1, 6))
            .map((state, i) => `${say(profile.times[i] as number, "s")}: ${sayNumber(state)}`)
            .join(
              "; ",
            )}${last > 5 ? `; … ${say(profile.times[last] as number, "s")}: ${sayNumber(states[last] as number)}` : ""}`,
        },
        {
          sentence: trips
            ? "In the next stretch the state reaches the trip"
            : "The hottest moment is looked for inside the stretches too, since a falling current can still warm the strip",
          plain: trips
            ? `s = 1 at ${say(begin + course.tripSeconds, "s", 6)}`
            : `highest s = ${sayNumber(highest, 6)} at ${hottest}`,
        },
      ],
      answer: trips
        ? `It trips at ${say(begin + course.tripSeconds, "s")} on the profile's clock.`
        : `It holds: the strip gets to ${sayNumber(100 * highest, 4)} % of the heat that trips it, at ${hottest}.`,
      cautions:
        !trips && highest > 0.8
          ? ["It holds by little: a few per cent more current, warmer air or a warm start may trip it."]
          : [],
    };
  },
  plot: (given) => {
    const { profile, segments, states, begin, course } = run(given);
    const total = (profile.times.at(-1) as number) - begin;
    if (total === 0) return undefined;
    const starts = profile.times.map((time) => time - begin);
    const at = (t: number): { segment: Segment; i: number; within: number } => {
      const i = stretchAt(starts, t);
      return { segment: segments[i] as Segment, i, within: t - (starts[i] as number) };
    };
    return statePicture({
      title: "The strip through the profile",
      sentence:
        course.tripSeconds < Infinity
          ? `The thermal state reaches the trip, 1, after ${say(course.tripSeconds, "s")}.`
          : `The thermal state stays below the trip; its highest value is ${sayNumber(course.highest / given.pickup ** 2)}.`,
      seconds: total,
      moments: drawn(starts).flatMap((start) => [start, start - total * 1e-6]),
      tripSeconds: course.tripSeconds,
      stateAt: (t) => {
        const { segment, i, within } = at(t);
        if (segment.seconds === 0) return states[i] as number;
        const heat = (states[i] as number) * given.pickup ** 2;
        return heatWithin(given.timeConstant, segment, heat, within) / given.pickup ** 2;
      },
      settlesAt: (t) => {
        const { segment, within } = at(t);
        const current =
          segment.seconds === 0 ? segment.to : segment.from + ((segment.to - segment.from) * within) / segment.seconds;
        return (current / given.pickup) ** 2;
      },
    });
  },
});
