import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import { loneValues, type Source } from "../metrology/source";
import { hottestAir } from "./air";
import { effectiveArea } from "./area";
import { balanceRise, balanceWatts } from "./balance";
import type { Cabinet } from "./cabinet";
import { constantsOf, tabledRise, tabledWatts } from "./iec60890";

export const methods = ["balance", "IEC TR 60890", "flat"] as const;

export type Method = (typeof methods)[number];

/** An enclosure and how its heat is worked out. */
export interface Cooling {
  readonly cabinet: Cabinet;
  readonly method: Method;
  /** °C */
  readonly room: number;
  /** Of all surfaces; used by the balance alone. */
  readonly emissivity: number;
  /** Level partitions, 0 to 3; used by IEC TR 60890 alone. */
  readonly partitions: number;
}

/** Rise of the inside air above the room, K. */
interface Rise {
  readonly middle: number;
  /** undefined where the method gives none. */
  readonly top: number | undefined;
}

/** The hand estimate: W/(m²·K) of effective area, painted steel. It gives too small a rise. */
export const flatCoefficient = 5.5;

export const flatSource: Source = {
  document: "hand estimate for painted sheet steel",
  place: "several public worked examples, such as 4.4 m² × 10 K = 242 W",
  standing: "corroborated",
  tables: [
    {
      title: "Hand estimate",
      columns: loneValues,
      rows: [["heat through the effective area", flatCoefficient, "W/(m²·K)"]],
      guard: "test/enclosure/published.test.ts",
    },
  ],
};

/** Throws NoAnswer beyond what the method covers. */
export const riseOf = ({ cabinet, method, room, emissivity, partitions }: Cooling, watts: number): Rise => {
  if (method === "balance") return { middle: balanceRise(cabinet, watts, { room, emissivity }), top: undefined };
  if (method === "flat") return { middle: watts / (flatCoefficient * effectiveArea(cabinet)), top: undefined };
  const constants = constantsOf(cabinet, partitions);
  const middle = tabledRise(constants, watts);
  return { middle, top: constants.c === undefined ? undefined : constants.c * middle };
};

/** The heat, W, that makes a rise of the inside air at mid-height. Throws NoAnswer beyond what the method covers. */
export const wattsAt = ({ cabinet, method, room, emissivity, partitions }: Cooling, rise: number): number => {
  if (method === "flat") return flatCoefficient * effectiveArea(cabinet) * rise;
  if (method === "IEC TR 60890") return tabledWatts(constantsOf(cabinet, partitions), rise);
  if (room + rise > hottestAir)
    throw new NoAnswer(
      `rise: ${sayNumber(rise)} K above a room of ${sayNumber(room)} °C is beyond ${hottestAir} °C, where the table of air ends.`,
    );
  return balanceWatts(cabinet, { inside: room + rise, room, emissivity });
};
