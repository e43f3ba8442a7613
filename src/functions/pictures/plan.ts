import type { PlannedBreaker } from "../../bench/plan";
import { testPlan } from "../../bench/plan";
import type { Plot } from "../../definition/plot";
import { asked } from "../../trip/asked";
import { bandPlot } from "./trip-band";

/** The lines of a plan where each stops, against the band from cold. */
export const planPlot = (planned: PlannedBreaker): Plot => {
  const points = testPlan(planned).flatMap(({ step, current, stopAt }) =>
    typeof current === "number" && stopAt !== undefined
      ? [{ name: step, role: "asked" as const, x: current, y: Math.min(20000, stopAt) }]
      : [],
  );
  return bandPlot(
    asked(planned.rating, planned.characteristic, { setting: planned.setting }),
    "The lines of the plan, where each stops, against the band from cold",
    { current: Math.max(...points.map(({ x }) => x)), points },
  );
};
