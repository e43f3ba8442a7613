import type { Plot } from "../../definition/plot";
import { hottestAir } from "../../enclosure/air";
import { warmFaces } from "../../enclosure/balance";
import { constantsOf } from "../../enclosure/iec60890";
import { type Cooling, wattsAt } from "../../enclosure/rise";
import { say } from "../../metrology/say";

const samples = 40;

/** Temperatures over the heat, with the point that was asked for: the air inside, and what the method tells beside it. */
export const risePicture = (cooling: Cooling, { watts, rise }: { watts: number; rise: number }): Plot => {
  const { method, room } = cooling;
  // Past the point asked, but not past the hottest air that the balance knows.
  const highest = method === "balance" ? Math.min(1.5 * rise, hottestAir - room) : 1.5 * rise;
  const air = Array.from({ length: samples + 1 }, (_, i) => {
    const above = (highest * i) / samples;
    return { x: i === 0 ? 0 : wattsAt(cooling, above), y: room + above };
  });
  const end = air[samples]?.x as number;
  const beside = besideAir(cooling);
  const band = beside && {
    name: beside.name,
    samples: air.map(({ x, y }) => ({ x, low: Math.min(y, beside.at(y)), high: Math.max(y, beside.at(y)) })),
  };
  const hottest = Math.max(...air.map(({ y }) => y), ...(band?.samples.map(({ high }) => high) ?? []));
  return {
    title: "Temperatures over the heat made inside",
    sentence: `The more heat, the warmer the air inside: ${say(room + rise, "°C")} at ${say(watts, "W")} in a room of ${say(room, "°C")}, by the method "${method}".`,
    x: { quantity: "heat", unit: "W", scale: "linear", from: 0, to: end },
    y: { quantity: "temperature", unit: "°C", scale: "linear", from: room, to: hottest },
    bands: band && [band],
    lines: [{ name: "air inside", role: "course", samples: air }],
    points: [{ name: "the heat asked about", role: "asked", x: watts, y: room + rise }],
  };
};

/** A second temperature that goes with the air at mid-height, °C → °C. */
const besideAir = ({ method, cabinet, room, emissivity, partitions }: Cooling) => {
  if (method === "balance")
    return {
      name: "from the upright walls to the air inside",
      at: (inside: number) =>
        warmFaces(cabinet, { inside, room, emissivity }).find(({ name }) => name === "front")?.wall ?? inside,
    };
  const c = method === "flat" ? undefined : constantsOf(cabinet, partitions).c;
  return c === undefined
    ? undefined
    : { name: "from mid-height to the top", at: (inside: number) => room + c * (inside - room) };
};
