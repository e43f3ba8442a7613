const scan = 48;

/** The most of f over some stretches: a scan finds the place, golden section the top. */
export const peak = (f: (u: number) => number, stretches: readonly (readonly [number, number])[]): number => {
  let most = -Infinity;
  for (const [from, to] of stretches) {
    const at = (i: number): number => from + ((to - from) * i) / scan;
    const values = Array.from({ length: scan + 1 }, (_, i) => f(at(i)));
    const best = values.indexOf(Math.max(...values));
    let [low, high] = [at(Math.max(0, best - 1)), at(Math.min(scan, best + 1))];
    for (let i = 0; i < 60; i++) {
      const step = ((Math.sqrt(5) - 1) / 2) * (high - low);
      if (f(high - step) > f(low + step)) high = low + step;
      else low = high - step;
    }
    most = Math.max(most, values[best] as number, f((low + high) / 2));
  }
  return most;
};
