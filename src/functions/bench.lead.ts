import * as z from "zod/mini";
import {
  adiabaticSource,
  copperK,
  insulationLimit,
  leadRise,
  meltingSource,
  pvcForLong,
  pvcSource,
  type Shot,
  shortShot,
  shortShotSource,
  shotExponent,
  usualStart,
  usualStartSource,
} from "../bench/lead";
import { astmB258 } from "../contact/astm-b258";
import { copperZero } from "../contact/copper";
import { define } from "../definition/define";
import { type Given, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { exceeds } from "../metrology/exceeds";
import { say, sayNumber } from "../metrology/say";
import { injectionCaution } from "./accounts/cautions";
import { startTemperature, testCurrent } from "./arguments/bench";
import { size } from "./arguments/size";
import { refuseZero } from "./arguments/zero-degrees";
import { leadPicture } from "./pictures/lead";

const parameters = {
  current: testCurrent,
  time: quantity("s", "how long the shot lasts", z.number().check(z.positive(), z.maximum(1e6))),
  size: size("size of the lead"),
  startTemperature,
} as const;

export default define({
  name: "BENCH.LEAD",
  summary:
    "How hot a copper lead gets in one short shot, while no heat leaves it, and whether its insulation bears that.",
  parameters,
  results: [
    { name: "rise", unit: "K", meaning: "by which the copper warms" },
    { name: "end temperature", unit: "°C", meaning: "of the copper when the shot ends" },
    { name: "insulation limit", unit: "°C", meaning: "what PVC insulation may reach at the end of a short shot" },
    {
      name: "finding",
      unit: "",
      meaning: "within what PVC carries for long; a short shot only; beyond the limit; or not sure, after long shots",
    },
  ],
  answers: "row",
  sources: [adiabaticSource, pvcSource, shortShotSource, meltingSource, usualStartSource, astmB258],
  cautions: [
    "A hot lead burns the hand that moves it: above about 60 °C do not touch (common practice, no source). Let it cool before it is moved.",
    "For one shot: the next one starts where this one ended. Let the lead cool, or give the start temperature.",
    "Lugs, clamps and joints are the hottest places and are not in it: bolt them clean and tight.",
    "PVC is taken, the tenderest of the common insulations; a lead marked for 90 °C bears more.",
    injectionCaution,
  ],
  examples: [
    {
      cells: [115, 1, "1 mm²", 70],
      gives: [90, 160, 160, "a short shot only: above 70 °C, what PVC carries for long"],
      within: 1e-3,
      worked: "IEC 60364-4-43 Table 43A: k = 115 A·√s per mm² takes copper in PVC from 70 °C to 160 °C",
    },
    {
      cells: [200, 5, "10 mm²", 20],
      gives: [10.1632, 30.1632, 160, "within what PVC carries for long, 70 °C"],
      within: 1e-5,
      worked: "by hand: 200² × 5 ÷ (226² × 10²) = 0.0391573; 254.5 K × (e^0.0391573 − 1) = 10.1632 K",
    },
  ],
  calculate: (given) => {
    const shot = shotOf(given);
    const rise = leadRise(shot);
    return [rise, shot.start + rise, insulationLimit(shot.size), findingOf(shot, shot.start + rise)];
  },
  explain: (given, [rise, end, limit, finding]) => {
    const shot = shotOf(given);
    const { current, seconds, size, start } = shot;
    const exponent = shotExponent(shot);
    const area = size.areaSquareMillimetres;
    return {
      steps: [
        {
          sentence: `The heat of the shot against what ${sayNumber(area)} mm² of copper can store (K = ${copperK} A·√s per mm²)`,
          tex: String.raw`x = \frac{I^2 t}{K^2 S^2} = \frac{${tex(current)}^2 \cdot ${tex(seconds)}}{${copperK}^2 \cdot ${tex(area)}^2} = ${tex(exponent)}`,
          plain: `x = (${say(current, "A")})² × ${say(seconds, "s")} ÷ (${copperK}² × (${sayNumber(area)} mm²)²) = ${sayNumber(exponent)}`,
        },
        {
          sentence: "Copper's resistance grows as it warms, so the rise is an exponential",
          tex: String.raw`\Delta\theta = (\beta + \theta_0)(e^x - 1) = (${copperZero} + ${tex(start)})(e^{${tex(exponent)}} - 1) = ${tex(Number(rise), "K")}`,
          plain: `(${copperZero} + ${sayNumber(start)}) × (e^${sayNumber(exponent)} − 1) = ${say(Number(rise), "K")}`,
        },
        {
          sentence: `The copper ends at this temperature; PVC may reach ${say(Number(limit), "°C")} at the end of a short shot and carries ${say(pvcForLong, "°C")} for long`,
          tex: String.raw`\theta = ${tex(start)} + ${tex(Number(rise))} = ${tex(Number(end), "°C")}`,
          plain: `${say(start, "°C")} + ${say(Number(rise), "K")} = ${say(Number(end), "°C")}`,
        },
      ],
      answer: `The lead ends at ${say(Number(end), "°C")}${seconds > shortShot ? " at most" : ""}: ${finding}.`,
      cautions: [
        ...(seconds > shortShot
          ? [
              `The law holds for shots up to about ${shortShot} s. In ${say(seconds, "s")} heat leaves the lead, so this is an upper bound; for long currents the conductor's ampacity decides.`,
            ]
          : []),
      ],
    };
  },
  plot: (given, [, end, limit]) => leadPicture(shotOf(given), { end: Number(end), limit: Number(limit) }),
});

type Inputs = Given<typeof parameters>;

const shotOf = ({ current, time, size, startTemperature = usualStart }: Inputs): Shot => {
  refuseZero("lead", startTemperature);
  return { current, seconds: time, size, start: startTemperature };
};

const findingOf = ({ seconds, size }: Shot, end: number): string => {
  const limit = say(insulationLimit(size), "°C");
  const forLong = say(pvcForLong, "°C");
  if (exceeds(end, insulationLimit(size)))
    return seconds > shortShot
      ? `not sure to stay within ${limit}: the heat that leaves is not counted`
      : `beyond the limit of ${limit}: a thicker lead or a shorter shot is wanted`;
  return exceeds(end, pvcForLong)
    ? `a short shot only: above ${forLong}, what PVC carries for long`
    : `within what PVC carries for long, ${forLong}`;
};
