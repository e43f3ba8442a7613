import { call } from "../../src/definition/call";
import { asked } from "../../src/trip/asked";
import { envelopeOf } from "../../src/trip/envelope";
import { iec60898 } from "../../src/trip/iec60898";
import { verdict } from "../../src/trip/verdict";
import { catalogued } from "./catalogued";
import { type Comparison, compare } from "./compare";

// A whole column in one call against the loop somebody would write by hand for exactly this question over the same cells: the
// envelope solved once, no cell checked, no conditions, no refusals; the same rows of answers made.

const rows = 1_048_576;

/** Cells of a column by a fixed rule: no two alike, none at an edge. */
const cells = (from: number, to: number): number[][] =>
  Array.from({ length: rows }, (_, i) => [from + (to - from) * ((i * 0.618034) % 1)]);

export const columns = (): Comparison[] => {
  const currents = cells(21, 230);
  const times = cells(0.5, 90);
  const envelope = envelopeOf(iec60898.C.classOf(20));
  const goal = "≤ 1.3 ×";

  const range = (current: number): [number | string, number | string] => {
    const square = (current / 20) ** 2;
    if (current <= 20) return ["holds", "no limit"];
    if (current <= 22.6) return [3600, "no limit"];
    const shortest = current > 100 ? 0 : Math.max(0.1, envelope.shortest(square, 0).seconds);
    const longest = envelope.longest(square, 0).seconds;
    return [shortest, current >= 200 ? Math.min(0.1, longest) : longest === Infinity ? "no limit" : longest];
  };
  const bareRange = () => {
    const answers = new Array(rows);
    for (let i = 0; i < rows; i++) answers[i] = range(currents[i]?.[0] as number);
    return answers;
  };
  const kind = asked(20, iec60898.C, {});
  const bareVerdict = () => {
    const answers = new Array(rows);
    for (let i = 0; i < rows; i++) {
      const trial = {
        current: currents[i]?.[0] as number,
        time: times[i]?.[0] as number,
        outcome: "tripped" as const,
        currentError: 0,
        timeError: 0,
      };
      const { verdict: word, why } = verdict(kind, trial);
      answers[i] = [word, why];
    }
    return answers;
  };
  const bareTime = () => {
    const answers = new Array(rows);
    for (let i = 0; i < rows; i++) {
      const current = currents[i]?.[0] as number;
      answers[i] = [current <= 22 ? "holds" : 100 * Math.log1p((22 * 22) / ((current - 22) * (current + 22)))];
    }
    return answers;
  };
  return [
    compare(
      `TRIP.RANGE, ${rows} rows in one call`,
      () => call(catalogued("TRIP.RANGE"), [currents, 20, "C"]),
      "bare loop of the same mathematics",
      bareRange,
      goal,
      5,
    ),
    compare(
      `TRIP.VERDICT, ${rows} rows in one call`,
      () => call(catalogued("TRIP.VERDICT"), [currents, times, 20, "C"]),
      "bare loop of the trade's own verdict, reasons included",
      bareVerdict,
      goal,
      5,
    ),
    compare(
      `THERMAL.TIME, ${rows} rows in one call`,
      () => call(catalogued("THERMAL.TIME"), [currents, 22, 100]),
      "bare loop of the same mathematics",
      bareTime,
      goal,
      5,
    ),
  ];
};
