/** Resistance of a pole, Ω, from the current through it (A) and the drop across it (V): ΔV and I in phase. */
export const poleOhms = (current: number, drop: number): number => drop / current;
