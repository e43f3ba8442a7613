import { leadRise, type Shot } from "../../bench/lead";
import type { Plot } from "../../definition/plot";
import { say } from "../../metrology/say";

const samples = 40;

/** The temperature of a lead through the shot, against the limit. */
export const leadPicture = (shot: Shot, { end, limit }: { end: number; limit: number }): Plot => {
  const { seconds, start, size } = shot;
  const course = Array.from({ length: samples + 1 }, (_, i) => (seconds * i) / samples).map((x) => ({
    x,
    y: x === 0 ? start : start + leadRise({ ...shot, seconds: x }),
  }));
  return {
    title: "The lead through the shot",
    sentence: `${size.name} warms from ${say(start, "°C")} to ${say(end, "°C")} in ${say(seconds, "s")}; the limit of PVC is ${say(limit, "°C")}.`,
    x: { quantity: "time", unit: "s", scale: "linear", from: 0, to: seconds },
    y: {
      quantity: "temperature",
      unit: "°C",
      scale: "linear",
      from: Math.min(0, start),
      to: 1.05 * Math.max(end, limit),
    },
    lines: [
      { name: "limit of PVC", role: "limit", samples: [0, seconds].map((x) => ({ x, y: limit })) },
      { name: "the copper", role: "course", samples: course },
    ],
    points: [{ name: "the end of the shot", role: "asked", x: seconds, y: end }],
  };
};
