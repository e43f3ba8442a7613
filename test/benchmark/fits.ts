import { call } from "../../src/definition/call";
import { catalogued } from "./catalogued";
import { type Comparison, measure } from "./compare";

/** Forty trials of one breaker, four of them holds, fitted anew each time. */
export const fits = (): Comparison[] => {
  const [pickup, timeConstant] = [22.4, 95];
  const trials = Array.from({ length: 36 }, (_, i) => {
    const current = [26, 30, 36, 44, 52, 60][i % 6] as number;
    // A scatter of 6 %, by a fixed rule.
    const scatter = 0.06 * Math.sqrt(12) * (((i + 1) * 0.618034) % 1) - 0.06 * Math.sqrt(3);
    const time = timeConstant * Math.log(current ** 2 / (current ** 2 - pickup ** 2)) * Math.exp(scatter);
    return { current, time, outcome: "tripped" };
  });
  const holds = [18, 20, 21, 22].map((current) => ({ current, time: 1800, outcome: "held" }));
  const all = [...trials, ...holds];
  const column = (cells: readonly (number | string)[]) => cells.map((cell) => [cell]);
  const args = [
    column(all.map(({ current }) => current)),
    column(all.map(({ time }) => time)),
    column(all.map(({ outcome }) => outcome)),
  ];
  return [
    measure("THERMAL.FIT, 36 trips and 4 holds", () => call(catalogued("THERMAL.FIT"), args), "≤ 20 ms", 15),
    measure(
      "THERMAL.FIT, 250 trips and 250 holds at as many currents",
      () => call(catalogued("THERMAL.FIT"), manyHolds()),
      "≤ 250 ms",
      5,
    ),
  ];
};

/** The longest log that is taken, the worst for the search: each held current cuts the pickups in two. */
const manyHolds = () => {
  const [pickup, timeConstant] = [22.4, 95];
  const share = (i: number): number => (i * 0.618034) % 1;
  const body = (current: number) => timeConstant * Math.log(current ** 2 / (current ** 2 - pickup ** 2));
  const trials = Array.from({ length: 500 }, (_, i) => {
    if (i % 2 === 0) {
      const current = 25 + 40 * share(i + 1);
      return [current, body(current) * Math.exp(0.24 * (share(7 * i + 3) - 0.5)), "tripped"] as const;
    }
    const current = 16 + 8 * share(i + 1);
    return [current, current < pickup + 0.01 ? 2000 : body(current) / 2, "held"] as const;
  });
  return [0, 1, 2].map((column) => trials.map((trial) => [trial[column] as number | string]));
};
