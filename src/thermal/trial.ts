/** One trial on the bench: a steady current from cold or from a long steady preload. */
export interface Trial {
  /** A */
  readonly current: number;
  /** s until the trip, or s that it held. */
  readonly seconds: number;
  readonly held: boolean;
  /** A carried for long before; 0 is cold. */
  readonly preload: number;
}

/** Trials in one fixed order, so that no sum depends on the order of the rows. */
export const inOrder = (trials: readonly Trial[]): Trial[] =>
  [...trials].sort(
    (a, b) =>
      a.current - b.current || a.preload - b.preload || Number(a.held) - Number(b.held) || a.seconds - b.seconds,
  );

/** ln of the time in time constants that a trial takes at a pickup, and its slope; Infinity: it would hold for ever; −Infinity: the preload trips it. */
export const lnTimeConstants = (
  { current, preload }: Pick<Trial, "current" | "preload">,
  pickup: number,
): { value: number; slope: number } => {
  const missing = (pickup - preload) * (pickup + preload);
  if (missing <= 0) return { value: -Infinity, slope: 0 };
  const surplus = (current - pickup) * (current + pickup);
  if (surplus <= 0) return { value: Infinity, slope: 0 };
  const ratio = Math.log1p(missing / surplus);
  return { value: Math.log(ratio), slope: (2 * pickup) / (surplus * ratio) };
};
