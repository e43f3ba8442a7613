import type { Characteristic } from "../trip/characteristic";
import { benchOf } from "../trip/conditions";
import { fieldSteps } from "./field-steps";
import { firstSteps } from "./first-steps";
import { magneticSteps } from "./magnetic-steps";
import type { PlanStep, Subject } from "./plan-step";
import { fromCold, restSeconds } from "./rest";
import { stagedSteps } from "./staged-steps";

/** What a plan is asked for. */
export interface PlannedBreaker {
  /** A */
  readonly rating: number;
  readonly characteristic: Characteristic;
  readonly poles: number;
  /** s, of this breaker's own strip; left out: the slowest that a sound one may have. */
  readonly timeConstant?: number;
  /** A, the marked setting of the magnetic release; left out: the plan says to read it. */
  readonly setting?: number;
}

/**
 * The lines of a bench test in the order in which one does not spoil the next: what only looks, what is gentle, what is to be as
 * found, the long currents, the magnetic release last. Throws NoAnswer for a rating outside the document.
 */
export const testPlan = ({
  rating,
  characteristic,
  poles,
  timeConstant,
  setting,
}: PlannedBreaker): readonly PlanStep[] => {
  const breaker = { rating, characteristic };
  const bench = benchOf(breaker, { setting });
  const rest = restSeconds(timeConstant ?? bench.envelope.slowestTimeConstant);
  const subject: Subject = { bench, warm: benchOf(breaker, { setting, preload: bench.holdEdge }), poles, rest };
  const staged = bench.ratedClass.trips.some(({ after }) => after !== undefined);
  return [
    ...firstSteps(subject),
    ...(staged ? stagedSteps(subject) : fieldSteps(subject)),
    ...magneticSteps(subject, characteristic, setting),
    exercise(subject),
  ];
};

const exercise = ({ rest }: Subject): PlanStep => ({
  step: "if a trip was late: exercise it by hand, rest, repeat that line",
  rest,
  caution: `${fromCold(rest)} Write both down, as found and exercised (THERMAL.COMPARE): a mechanism that only exercise frees is a finding, not a pass.`,
});
