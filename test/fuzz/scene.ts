import type { Range } from "../../src/definition/cells";
import { either, linear, logarithmic, oneOf, type Throw, typed } from "./dice";

/** A breaker on its bench, for the arguments of one row to agree with. */
export interface Scene {
  readonly rating: number;
  readonly characteristic: string | Range;
  readonly pickup: number;
  readonly timeConstant: number;
}

export const sceneDice = 4;

const ratings = [1, 2, 6, 10, 13, 15, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];
const markedSetting = ["IEC 60947-2", "UL 489", "IEC 60947-2 typical", "UL 489 typical"];

/** Bands of a tester's own: multiple, shortest, longest. */
const bands: readonly Range[] = [
  [
    [1.2, 20, "no limit"],
    [2, 5, 60],
    [10, 0.5, 4],
    [40, 0, 0.1],
  ],
  [
    [1, 100, "No  Limit"],
    [30, 0.01, 8],
    [0, 0, 0],
  ],
  [
    [1.5, 0, 1000],
    [1.5000001, 0, 999],
    [25, 0, 0.02],
  ],
];

const rating = either(oneOf(...ratings), oneOf(...ratings), logarithmic(0.5, 150));
const characteristic: Throw<string | Range> = either<string | Range>(
  oneOf("B", "C", "D"),
  oneOf("B", "C", "D", " c", "d "),
  oneOf(...markedSetting),
  oneOf(...markedSetting, "ul 489", " Iec  60947-2 Typical"),
  oneOf<string | Range>("C", "D", "UL 489", "IEC 60947-2", ...bands),
);
const pickupMultiple = linear(1.02, 1.4);
const timeConstant = logarithmic(5, 500);

export const sceneOf = (dice: readonly number[]): Scene => {
  const [a = 0, b = 0, c = 0, d = 0] = dice;
  const amperes = rating(a);
  return {
    rating: amperes,
    characteristic: characteristic(b),
    pickup: typed(amperes * pickupMultiple(c)),
    timeConstant: timeConstant(d),
  };
};

export const hasOwnBand = ({ characteristic }: Scene): boolean => typeof characteristic !== "string";

export const takesSetting = ({ characteristic }: Scene): boolean =>
  typeof characteristic === "string" && / \d/.test(characteristic);
