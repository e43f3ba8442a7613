import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import { airTable } from "../../enclosure/air";
import { effectiveArea, surfaceFactors } from "../../enclosure/area";
import { type WarmFace, warmFaces } from "../../enclosure/balance";
import { convectionSources, levelPlate, uprightPlate } from "../../enclosure/convection";
import { constantsOf } from "../../enclosure/iec60890";
import { iec60890 } from "../../enclosure/iec60890-source";
import { exponent } from "../../enclosure/iec60890-tables";
import { radiationSource } from "../../enclosure/radiation";
import { type Cooling, flatCoefficient, flatSource, type Method } from "../../enclosure/rise";
import { usualEmissivitySource } from "../../enclosure/usual";
import { say, sayNumber } from "../../metrology/say";
import type { Source } from "../../metrology/source";

export const coolingSources: Record<Method, readonly Source[]> = {
  balance: [...convectionSources, airTable, radiationSource, usualEmissivitySource],
  "IEC TR 60890": [iec60890, surfaceFactors],
  flat: [flatSource, surfaceFactors],
};

export const allCoolingSources: readonly Source[] = [...new Set(Object.values(coolingSources).flat())];

/** Cautions that stand on every answer about the air inside. */
export const enclosureCautions: readonly string[] = [
  "Breakers side by side warm each other: the air is the same for all, the spots between loaded neighbours are hotter. That is not included.",
  "A closed enclosure indoors, settled for hours, heat spread evenly: no openings, fans or sun on it.",
  "An estimate is no verification of the temperature rise: IEC 61439-1 has it tested, derived from a tested assembly, or calculated under rules of its own; the maker of the board answers for that. A thermometer inside the loaded board shows what it really is.",
];

/** What must be said of one method. */
export const methodCautions = (
  { method, cabinet, partitions }: Cooling,
  emissivityGiven: boolean,
): readonly string[] => {
  const unused =
    emissivityGiven && method !== "balance" ? [`The method "${method}" makes no use of the emissivity given.`] : [];
  if (method === "flat")
    return [
      `Flat ${flatCoefficient} W/m²K is optimistic: of a rise of 10 to 30 K by IEC TR 60890 at mid-height it gives about a half to nine tenths, of a smaller one less.`,
      ...unused,
    ];
  if (method === "balance")
    return [
      "The balance knows one inside air temperature; the air under the roof is hotter than that.",
      ...(cabinet.mounting.endsWith("covered top") ? ["A covered roof is counted as passing no heat."] : []),
    ];
  const { c } = constantsOf(cabinet, partitions);
  return [
    "The constants of IEC TR 60890 used here are from memory: check against the standard.",
    ...(c === undefined
      ? [
          "The top rise is not known: the table of top factors does not reach this shape. The air at mid-height is all there is, and breakers above it sit in warmer air.",
        ]
      : []),
    ...unused,
  ];
};

/** How the heat and the rise of the inside air hang together, with the numbers put in. */
export const coolingSteps = (cooling: Cooling, watts: number, rise: number): readonly Step[] => {
  if (cooling.method === "balance") return balanceSteps(cooling, watts, rise);
  if (cooling.method === "flat") return flatSteps(cooling, watts, rise);
  return tableSteps(cooling, watts, rise);
};

const areaStep = (cooling: Cooling): Step => {
  const area = effectiveArea(cooling.cabinet);
  return {
    sentence: `The effective area, each face by how well it passes heat (${cooling.cabinet.mounting})`,
    tex: String.raw`A_e = \sum b\,A_0 = ${tex(area, "m²", 5)}`,
    plain: `Ae = ${say(area, "m²", 5)}`,
  };
};

const flatSteps = (cooling: Cooling, watts: number, rise: number): readonly Step[] => {
  const area = effectiveArea(cooling.cabinet);
  return [
    areaStep(cooling),
    {
      sentence: `Every square metre passes ${flatCoefficient} W per kelvin`,
      tex: String.raw`\Delta T = \frac{P}{U A_e} = \frac{${tex(watts)}}{${flatCoefficient}\cdot ${tex(area, "", 5)}} = ${tex(rise, "K")}`,
      plain: `ΔT = ${say(watts, "W")} ÷ (${flatCoefficient} W/m²K × ${say(area, "m²", 5)}) = ${say(rise, "K")}`,
    },
  ];
};

const tableSteps = (cooling: Cooling, watts: number, rise: number): readonly Step[] => {
  const { k, d, c, slenderness } = constantsOf(cooling.cabinet, cooling.partitions);
  return [
    areaStep(cooling),
    {
      sentence: `The tables give k = ${sayNumber(k)} for that area and d = ${d} for ${cooling.partitions} partitions; mid-height warms by`,
      tex: String.raw`\Delta t_{0.5} = k\,d\,P^{${exponent}} = ${tex(k)}\cdot ${d}\cdot ${tex(watts)}^{${exponent}} = ${tex(rise, "K")}`,
      plain: `Δt0.5 = ${sayNumber(k)} × ${d} × (${say(watts, "W")})^${exponent} = ${say(rise, "K")}`,
    },
    c === undefined
      ? { sentence: `The table of top factors does not reach ${sayNumber(slenderness)}, so the top is not known` }
      : {
          sentence: `The table of top factors at ${sayNumber(slenderness)} gives c = ${sayNumber(c)}; the top warms by`,
          tex: String.raw`\Delta t_{1.0} = c\,\Delta t_{0.5} = ${tex(c)}\cdot ${tex(rise)} = ${tex(c * rise, "K")}`,
          plain: `Δt1.0 = ${sayNumber(c)} × ${say(rise, "K")} = ${say(c * rise, "K")}`,
        },
  ];
};

const balanceSteps = ({ cabinet, room, emissivity }: Cooling, watts: number, rise: number): readonly Step[] => {
  const inside = room + rise;
  const faces = warmFaces(cabinet, { inside, room, emissivity });
  const front = faces.find(({ name }) => name === "front") as WarmFace;
  const roof = faces.find(({ name }) => name === "roof");
  const { still, driven, prandtl } = uprightPlate;
  const { hotUp } = levelPlate;
  return [
    {
      sentence: `The faces that pass heat (${cabinet.mounting}); the floor, and what a wall, a neighbour or a cover hides, pass none`,
      plain: faces.map(({ name, area }) => `${name} ${say(area, "m²")}`).join("; "),
    },
    {
      sentence: `With the air inside at ${say(inside, "°C")} an upright wall settles where as much comes in, by convection and radiation, as goes out to the room at ${say(room, "°C")}`,
      tex: String.raw`h_i(T_i - T_w) + \varepsilon_i\sigma(T_i^4 - T_w^4) = h_o(T_w - T_r) + \varepsilon\sigma(T_w^4 - T_r^4), \quad T_w = ${tex(front.wall, "°C")}`,
      plain: `upright walls at ${say(front.wall, "°C")}: ${perArea(front)}`,
    },
    {
      sentence:
        "The coefficients of an upright wall by Churchill and Chu, over its height, with air at the film temperature",
      tex: String.raw`\mathrm{Nu} = \left(${still} + \frac{${driven}\,\mathrm{Ra}^{1/6}}{\left(1 + (${prandtl}/\mathrm{Pr})^{9/16}\right)^{8/27}}\right)^2, \quad h = \frac{\mathrm{Nu}\,k}{H}`,
      plain: `Nu = (${still} + ${driven}·Ra^(1/6) ÷ (1 + (${prandtl} ÷ Pr)^(9/16))^(8/27))², h = Nu·k ÷ height`,
    },
    ...(roof
      ? [
          {
            sentence: "The roof, a level plate hot side up outside and the same turned over inside",
            tex: String.raw`\mathrm{Nu} = \max\left(${hotUp.quarter}\,\mathrm{Ra}^{1/4},\ ${hotUp.third}\,\mathrm{Ra}^{1/3}\right), \quad T_w = ${tex(roof.wall, "°C")}`,
            plain: `Nu = the larger of ${hotUp.quarter}·Ra^(1/4) and ${hotUp.third}·Ra^(1/3); roof at ${say(roof.wall, "°C")}: ${perArea(roof)}`,
          },
        ]
      : []),
    {
      sentence: "What the faces pass together is the heat made inside",
      tex: `P = ${faces.map((face) => tex(face.watts)).join(" + ")} = ${tex(watts, "W")}`,
      plain: `${faces.map((face) => `${face.name} ${say(face.watts, "W")}`).join(" + ")} = ${say(watts, "W")}`,
    },
    {
      sentence: "The rise of the air inside above the room",
      tex: String.raw`\Delta T = ${tex(inside)} - ${tex(room)} = ${tex(rise, "K")}`,
      plain: `ΔT = ${say(inside, "°C")} − ${say(room, "°C")} = ${say(rise, "K")}`,
    },
  ];
};

const perArea = ({ area, convectedOutside, radiatedOutside }: WarmFace): string =>
  `${sayNumber(convectedOutside / area, 3)} W/m² by convection + ${sayNumber(radiatedOutside / area, 3)} W/m² by radiation`;
