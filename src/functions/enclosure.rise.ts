import * as z from "zod/mini";
import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { riseOf } from "../enclosure/rise";
import { usualRoomSource } from "../enclosure/usual";
import { say } from "../metrology/say";
import { allCoolingSources, coolingSources, coolingSteps, enclosureCautions, methodCautions } from "./accounts/cooling";
import { coolingOf, depth, emissivity, height, method, mounting, partitions, room, width } from "./arguments/enclosure";
import { zeroCaution } from "./arguments/zero-degrees";
import { risePicture } from "./pictures/rise";

export default define({
  name: "ENCLOSURE.RISE",
  summary: "How much warmer than the room the air inside a closed enclosure gets from the heat made inside.",
  parameters: {
    watts: quantity("W", "all the heat made inside", z.number().check(z.minimum(1e-3), z.maximum(1e6)), {
      ifBlank: "the heat is blank.",
    }),
    height,
    width,
    depth,
    mounting,
    method,
    emissivity,
    room,
    partitions,
  },
  results: [
    { name: "mid-height rise", unit: "K", meaning: "rise of the inside air above the room at half the height" },
    { name: "top rise", unit: "K", meaning: "rise under the roof, or “not known” where the method gives none" },
  ],
  answers: "row",
  sources: [...allCoolingSources, usualRoomSource],
  cautions: enclosureCautions,
  examples: [
    {
      cells: [40, 0.6, 0.4, 0.15, "wall", null, null, 25],
      gives: [18.494, "not known"],
      within: 2e-3,
      worked:
        "the same equations in another program, air between the rows of the printed table, by bisection: 18.494 K",
    },
    {
      cells: [300, 2, 0.8, 0.6, "free"],
      gives: [11.572, "not known"],
      within: 2e-3,
      worked:
        "the same equations in another program, air between the rows of the printed table, by bisection: 11.572 K",
    },
    {
      cells: [300, 2.2, 1, 0.5, "wall", "IEC TR 60890"],
      gives: [14.2, 20.05],
      within: 5e-3,
      worked: "hand-worked from the tables (from memory): 0.1448 × 300^0.804 = 0.1448 × 98.09, × 1.412",
    },
    {
      cells: [240.9, 2, 0.6, 0.5, "free", "flat"],
      gives: [10, "not known"],
      worked: "hand-worked: 4.38 m² × 5.5 W/m²K × 10 K = 240.9 W",
    },
  ],
  calculate: (given) => {
    const { middle, top = "not known" } = riseOf(coolingOf(given), given.watts);
    return [middle, top];
  },
  explain: (given, [middle, top]) => {
    const cooling = coolingOf(given);
    const rise = Number(middle);
    const above = typeof top === "number" ? `, and by ${say(top, "K")} under the roof` : "";
    return {
      steps: coolingSteps(cooling, given.watts, rise),
      answer: `By the method "${cooling.method}" ${say(given.watts, "W")} warm the air inside by ${say(rise, "K")}${above}: about ${say(cooling.room + rise, "°C")} at mid-height in a room of ${say(cooling.room, "°C")}.`,
      sources: [...coolingSources[cooling.method], ...(given.room === undefined ? [usualRoomSource] : [])],
      cautions: [...zeroCaution("room", given.room), ...methodCautions(cooling, given.emissivity !== undefined)],
    };
  },
  plot: (given, [middle]) => risePicture(coolingOf(given), { watts: given.watts, rise: Number(middle) }),
});
