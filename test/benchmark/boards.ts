import { call } from "../../src/definition/call";
import { catalogued } from "./catalogued";
import { type Comparison, measure } from "./compare";

const column = (length: number, value: (i: number) => number) => Array.from({ length }, (_, i) => [value(i)]);

/** A board of 40 ways that warms itself, and the rise of one enclosure. */
export const boards = (): Comparison[] => {
  const ways = 40;
  const ratings = column(ways, (i) => [10, 16, 20, 32][i % 4] as number);
  const losses = column(ways, (i) => [1.8, 2.6, 3, 4.4][i % 4] as number);
  const loads = column(ways, (i) => ([10, 16, 20, 32][i % 4] as number) * (0.3 + 0.01 * i));
  const box = [1.2, 0.6, 0.25, "wall"] as const;
  return [
    measure(
      "ENCLOSURE.PANEL, 40 ways",
      () => call(catalogued("ENCLOSURE.PANEL"), [ratings, losses, loads, ...box, 30, "C"]),
      "≤ 5 ms",
    ),
    measure("ENCLOSURE.RISE, balance", () => call(catalogued("ENCLOSURE.RISE"), [120, ...box]), "≤ 1 ms"),
  ];
};
