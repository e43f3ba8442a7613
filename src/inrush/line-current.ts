export type Phases = 1 | 3;

/** A machine by its apparent power and the voltage of its supply, between the lines where there are three phases. */
export interface Supplied {
  readonly kilovoltAmperes: number;
  readonly volts: number;
  readonly phases: Phases;
}

/** Its current in each line, A: S ÷ V, or S ÷ (√3·V) with three phases. */
export const lineCurrent = ({ kilovoltAmperes, volts, phases }: Supplied): number =>
  (1000 * kilovoltAmperes) / (phases === 3 ? Math.sqrt(3) * volts : volts);
