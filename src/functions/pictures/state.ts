import type { Plot } from "../../definition/plot";

/** A thermal state through time, and where the current of the moment would take it: (current ÷ pickup)². */
interface StateCourse {
  readonly title: string;
  readonly sentence: string;
  readonly seconds: number;
  /** Moments that must not be missed between the even samples, such as the ends of steps. */
  readonly moments?: readonly number[];
  readonly stateAt: (seconds: number) => number;
  readonly settlesAt: (seconds: number) => number;
  /** Where it trips, s; Infinity if it holds. */
  readonly tripSeconds: number;
}

const samples = 120;

/** The picture of a thermal state against the trip line. */
export const statePicture = (course: StateCourse): Plot => {
  const { title, sentence, seconds, moments = [], stateAt, settlesAt, tripSeconds } = course;
  const even = Array.from({ length: samples + 1 }, (_, i) => (seconds * i) / samples);
  const xs = [...even, ...moments].filter((x) => x >= 0 && x <= seconds).sort((a, b) => a - b);
  const settles = xs.map((x) => ({ x, y: settlesAt(x) }));
  const states = xs.filter((x) => x <= tripSeconds).map((x) => ({ x, y: stateAt(x) }));
  if (tripSeconds <= seconds) states.push({ x: tripSeconds, y: 1 });
  const highest = Math.max(1, ...settles.map(({ y }) => y));
  const to = Math.min(1.1 * highest, 4);
  return {
    title,
    sentence,
    x: { quantity: "time", unit: "s", scale: "linear", from: 0, to: seconds },
    y: { quantity: "thermal state", unit: "", scale: "linear", from: 0, to },
    lines: [
      {
        name: "trip",
        role: "limit",
        samples: [
          { x: 0, y: 1 },
          { x: seconds, y: 1 },
        ],
      },
      { name: "state of the strip", role: "course", samples: states.map(({ x, y }) => ({ x, y: Math.min(y, to) })) },
      {
        name: "where the current would take it, (current ÷ pickup)²",
        role: "course",
        samples: settles.map(({ x, y }) => ({ x, y: Math.min(y, to) })),
      },
    ],
    points: tripSeconds <= seconds ? [{ name: "trips", role: "tripped", x: tripSeconds, y: 1 }] : [],
  };
};
