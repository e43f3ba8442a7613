import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import { effectiveArea } from "./area";
import type { Cabinet } from "./cabinet";
import {
  exponent,
  largeConstants,
  largeTopFactors,
  partitionFactors,
  smallConstants,
  smallTopFactors,
  smallUpTo,
  topCurves,
} from "./iec60890-tables";

/** What the tables give for one enclosure. */
interface Constants {
  readonly area: number;
  readonly k: number;
  readonly d: number;
  /** Top rise ÷ rise at mid-height; undefined beyond the table. */
  readonly c: number | undefined;
  /** Where c is read: height ÷ width of a small enclosure, height^1.35 ÷ base area of a large one. */
  readonly slenderness: number;
}

/** Reads a table between its rows, straight or as a power; undefined beyond its ends. */
const between = (
  rows: readonly (readonly number[])[],
  at: number,
  { column = 1, asPower = false }: { column?: number; asPower?: boolean } = {},
): number | undefined => {
  const next = rows.findIndex((row) => (row[0] as number) >= at);
  const high = rows[next];
  if (!high) return undefined;
  if (high[0] === at) return high[column];
  const low = rows[next - 1];
  if (!low) return undefined;
  const [x0, x1] = [low[0] as number, high[0] as number];
  const [y0, y1] = [low[column] as number, high[column] as number];
  if (asPower) return y0 * (y1 / y0) ** (Math.log(at / x0) / Math.log(x1 / x0));
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
};

/** Looks an enclosure up. Throws NoAnswer beyond the tables: an area outside 0.08 to 11.5 m², partitions in a small one. */
export const constantsOf = (cabinet: Cabinet, partitions: number): Constants => {
  const area = effectiveArea(cabinet);
  const small = area <= smallUpTo;
  if (small && partitions > 0)
    throw new NoAnswer(
      `partitions: IEC TR 60890 gives no factor for partitions up to ${smallUpTo} m² of effective area; this enclosure has ${sayNumber(area)} m².`,
    );
  const k = small ? between(smallConstants, area, { asPower: true }) : between(largeConstants, area);
  if (k === undefined)
    throw new NoAnswer(
      `The tables of IEC TR 60890 go from 0.08 to 11.5 m² of effective area; this enclosure has ${sayNumber(area)} m².`,
    );
  const slenderness = small ? cabinet.height / cabinet.width : cabinet.height ** 1.35 / (cabinet.width * cabinet.depth);
  const c = small
    ? between(smallTopFactors, slenderness)
    : between(largeTopFactors, slenderness, { column: topCurves[cabinet.mounting] });
  return { area, k, d: partitionFactors[partitions] as number, c, slenderness };
};

/** Rise of the air at mid-height, K. */
export const tabledRise = ({ k, d }: Constants, watts: number): number => k * d * watts ** exponent;

/** The heat, W, that makes a rise at mid-height. */
export const tabledWatts = ({ k, d }: Constants, rise: number): number => (rise / (k * d)) ** (1 / exponent);
