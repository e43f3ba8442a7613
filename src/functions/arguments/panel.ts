import { BadInput } from "../../definition/bad-input";
import type { Cell, Range } from "../../definition/cells";
import { refuseBlock } from "../../definition/lane";
import { optional, type Parameter, word } from "../../definition/parameter";
import { lossLaws, type PanelWay } from "../../enclosure/panel";
import type { Characteristic } from "../../trip/characteristic";
import { iec60898 } from "../../trip/iec60898";
import { knownCharacteristics } from "../../trip/known";
import { load, lossAtRating, poles, rating } from "./enclosure";

/**
 * A list with a row per way that keeps its blank rows, so that each answer stands beside its way.
 * A blank (or 0, which some hosts make of it) is `undefined`; one cell stands for all ways.
 */
const perWay = <T>({ gives: _, ...parameter }: Parameter<T>): Parameter<readonly (T | undefined)[]> => ({
  ...parameter,
  meaning: `${parameter.meaning}; a row per way, or one cell for all`,
  spread: "column",
  readBlock: (range: Range, name: string): readonly (T | undefined)[] => {
    const [row] = range;
    refuseBlock(range, name);
    const cells = range.length === 1 ? (row as readonly Cell[]) : range.map(([cell]) => cell as Cell);
    return cells.map((cell, i) =>
      cell === null || cell === 0 || cell === "" ? undefined : (parameter.read(cell, `${name}, row ${i + 1}`) as T),
    );
  },
});

const characteristicName = word(
  "the kind of breaker, which says at what air temperature its rating stands",
  knownCharacteristics.map(({ name }) => name) as [string, ...string[]],
);

/** What stands when no characteristic is given. */
const usual = iec60898.C;

export const panelLists = {
  ratings: perWay(rating),
  losses: perWay(lossAtRating),
  loads: perWay(load),
} as const;

export const panelOptions = {
  characteristic: optional(perWay(characteristicName), `as IEC 60898-1: the rating stands at ${usual.calibration} °C`),
  poles: optional(perWay(poles), "1 pole each"),
  lossesFollow: optional(
    word(
      "how the losses go with the air inside: “constant”, or “copper”, 0.393 % more per kelvin above 20 °C",
      lossLaws,
    ),
    "constant",
  ),
} as const;

interface Lists {
  readonly ratings: readonly (number | undefined)[];
  readonly losses: readonly (number | undefined)[];
  readonly loads: readonly (number | undefined)[];
  readonly characteristic?: readonly (string | undefined)[];
  readonly poles?: readonly (number | undefined)[];
}

/** The ways, with `undefined` for a row that is blank. */
export const waysOf = ({ ratings, losses, loads, characteristic, poles }: Lists): readonly (PanelWay | undefined)[] => {
  const lists = { ratings, losses, loads, characteristic, poles };
  const long = Object.entries(lists).flatMap(([name, list]) => (list && list.length > 1 ? [{ name, list }] : []));
  const count = long[0]?.list.length ?? 1;
  for (const { name, list } of long)
    if (list.length !== count)
      throw new BadInput(`The ranges do not fit: ${long[0]?.name} has ${count} rows, ${name} has ${list.length} rows.`);
  const main = [ratings, losses, loads].filter((list) => list.length > 1);
  const ways = Array.from({ length: count }, (_, i) => {
    if (main.length > 0 && main.every((list) => list[i] === undefined)) return undefined;
    const at = <T>(name: string, list: readonly (T | undefined)[]): T => {
      const value = list[list.length === 1 ? 0 : i];
      if (value === undefined) throw new BadInput(`${name}, row ${i + 1} is blank beside a way that is not.`);
      return value;
    };
    const name = characteristic ? at("characteristic", characteristic) : usual.name;
    return {
      rating: at("ratings", ratings),
      lossAtRating: at("losses", losses),
      load: loads[loads.length === 1 ? 0 : i] ?? 0,
      poles: poles ? at("poles", poles) : 1,
      characteristic: knownCharacteristics.find((known) => known.name === name) as Characteristic,
    };
  });
  if (ways.every((way) => way === undefined)) throw new BadInput("ratings, losses, loads: all rows are blank.");
  return ways;
};
