import { type Conductor, ohmsPerMetre } from "../contact/conductor";
import { loneValues, type Source } from "../metrology/source";

/** What a current has to be driven through: both leads, and the breaker with its joints, whose drop is in phase with the current. */
export interface TestLoop {
  /** A r.m.s. */
  readonly current: number;
  readonly size: Conductor;
  /** m of conductor, both leads together. */
  readonly length: number;
  /** V at that current. */
  readonly drop: number;
  /** Ω of the whole loop at the source's frequency. */
  readonly reactance: number;
}

/** µH of a metre of lead spread out: what a rectangular loop of leads has, shared out over its length. */
export const spreadInductance = 1;

export const spreadInductanceSource: Source = {
  document: "Rectangular loop of round wire (Grover, Inductance Calculations)",
  place: "loops of 1 m × 1 m and 2 m × 0.3 m, rounded",
  standing: "derived",
  tables: [
    {
      title: "Inductance of test leads",
      columns: loneValues,
      rows: [["a metre of lead spread out, about", spreadInductance, "µH"]],
      guard: "test/bench/source.test.ts",
    },
  ],
};

/** mΩ of a metre of lead spread out, at a frequency in Hz. */
export const spreadMilliohms = (hertz: number): number => 2e-3 * Math.PI * hertz * spreadInductance;

/** Leads in use are warm: their resistance is taken at this temperature, °C. */
export const warmLead = 75;

/** Ω of both leads, warm. */
export const leadOhms = ({ size, length }: Pick<TestLoop, "size" | "length">): number =>
  ohmsPerMetre(size, warmLead) * length;

/** V that the source must show at its terminals: |I·R + drop + j·I·X|. */
export const sourceVolts = (loop: TestLoop): number =>
  Math.hypot(loop.current * leadOhms(loop) + loop.drop, loop.current * loop.reactance);

/** A that an open-circuit voltage drives through the loop, the breaker's drop growing with the current. */
export const reachableCurrent = (loop: TestLoop, openCircuitVolts: number): number =>
  (openCircuitVolts / sourceVolts(loop)) * loop.current;
