/** Power lost in one pole, W: current in A times voltage drop in V. The drop of a pole is in phase with its current. */
export const poleWatts = (current: number, drop: number): number => current * drop;
