import type { Plot } from "../../definition/plot";
import { hottestAir } from "../../enclosure/air";
import { type Cooling, wattsAt } from "../../enclosure/rise";
import { say } from "../../metrology/say";

const samples = 40;

/** The rise of the inside air over the heat, with the point that was asked for. */
export const risePicture = (cooling: Cooling, { watts, rise }: { watts: number; rise: number }): Plot => {
  // Past the point asked, but not past the hottest air that the method knows.
  const highest = cooling.method === "balance" ? Math.min(1.5 * rise, hottestAir - cooling.room) : 1.5 * rise;
  const course = Array.from({ length: samples + 1 }, (_, i) => {
    const y = (highest * i) / samples;
    return { x: y === 0 ? 0 : wattsAt(cooling, y), y };
  });
  return {
    title: "Rise of the air inside over the heat made inside",
    sentence: `The more heat, the warmer the air inside: ${say(rise, "K")} above the room at ${say(watts, "W")}, by the method "${cooling.method}".`,
    x: { quantity: "heat", unit: "W", scale: "linear", from: 0, to: course[samples]?.x as number },
    y: { quantity: "rise at mid-height", unit: "K", scale: "linear", from: 0, to: highest },
    lines: [{ name: cooling.method, role: "course", samples: course }],
    points: [{ name: `${say(watts, "W")}: ${say(rise, "K")}`, role: "asked", x: watts, y: rise }],
  };
};
