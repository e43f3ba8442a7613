import * as z from "zod/mini";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { wattsAt } from "../enclosure/rise";
import { usualRoomSource } from "../enclosure/usual";
import { say } from "../metrology/say";
import { allCoolingSources, coolingSources, coolingSteps, enclosureCautions, methodCautions } from "./accounts/cooling";
import { coolingOf, depth, emissivity, height, method, mounting, partitions, room, width } from "./arguments/enclosure";
import { zeroCaution } from "./arguments/zero-degrees";
import { risePicture } from "./pictures/rise";

export default define({
  name: "ENCLOSURE.DISSIPATES",
  summary: "How much heat a closed enclosure passes to the room while the air inside is warmer by a given rise.",
  parameters: {
    rise: quantity(
      "K",
      "rise of the inside air above the room, at mid-height",
      z.number().check(z.minimum(1e-3), z.maximum(200)),
      {
        ifBlank: "the rise is blank.",
      },
    ),
    height,
    width,
    depth,
    mounting,
    method,
    emissivity,
    room,
    partitions,
  },
  results: [{ name: "heat", unit: "W", meaning: "heat passed to the room at that rise" }],
  answers: "row",
  sources: [...allCoolingSources, usualRoomSource],
  cautions: enclosureCautions,
  examples: [
    {
      cells: [20, 0.6, 0.4, 0.15, "wall", null, null, 25],
      gives: [43.812],
      within: 2e-3,
      worked: "the same equations in another program, air between the rows of the printed table: 43.812 W",
    },
    {
      cells: [10, 2, 0.6, 0.5, "free", "flat"],
      gives: [240.9],
      worked: "hand-worked: 4.38 m² × 5.5 W/m²K × 10 K",
    },
    {
      cells: [14.203, 2.2, 1, 0.5, "wall", "IEC TR 60890"],
      gives: [300],
      within: 1e-3,
      worked: "hand-worked from the tables (from memory): (14.203 ÷ 0.1448)^(1/0.804) = 98.09^1.2438",
    },
  ],
  calculate: (given) => [wattsAt(coolingOf(given), given.rise)],
  explain: (given, [answer]) => {
    const cooling = coolingOf(given);
    const watts = Number(answer);
    return {
      steps: coolingSteps(cooling, watts, given.rise),
      answer: `By the method "${cooling.method}" the enclosure passes ${say(watts, "W")} while its air is ${say(given.rise, "K")} above a room of ${say(cooling.room, "°C")}.`,
      sources: [...coolingSources[cooling.method], ...(given.room === undefined ? [usualRoomSource] : [])],
      cautions: [...zeroCaution("room", given.room), ...methodCautions(cooling, given.emissivity !== undefined)],
    };
  },
  plot: (given, [answer]) => risePicture(coolingOf(given), { watts: Number(answer), rise: given.rise }),
});
