import type { Bench } from "../trip/conditions";
import { tripRange } from "../trip/range";

/** One line of a test plan. Seconds and amperes; what has no place in a line is left out. */
export interface PlanStep {
  readonly step: string;
  /** A through the poles; "not known" where a marked setting would tell. */
  readonly current?: number | "not known";
  /** Between which times, s, a sound breaker trips here; Infinity: it holds, or need never trip. */
  readonly band?: Band | "not known";
  /** s after which nothing more is to be learned: the source is switched off. */
  readonly stopAt?: number;
  /** s without current before it; 0: straight after the line above. */
  readonly rest?: number;
  readonly caution: string;
}

interface Band {
  readonly shortest: number;
  readonly longest: number;
}

/** The breaker that a plan is for. */
export interface Subject {
  /** From cold. */
  readonly bench: Bench;
  /** Straight after its hold. */
  readonly warm: Bench;
  readonly poles: number;
  /** s from a thermal trip until the strip is cold again. */
  readonly rest: number;
}

/** s, between which a sound breaker trips at a current, A. */
export const bandAt = (bench: Bench, current: number): Band => {
  const { shortest, longest } = tripRange(bench, current);
  return { shortest: shortest.seconds, longest: longest.seconds };
};

/** A line for each pole, loaded alone. */
export const eachPole = <T>(poles: number, line: (pole: string) => T): readonly T[] =>
  poles === 1 ? [line("")] : Array.from({ length: poles }, (_, i) => line(`, pole ${i + 1} alone`));
