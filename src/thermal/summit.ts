import { rootIfAny } from "../metrology/root";

/** A function's value and slope at x. */
export interface Height {
  readonly x: number;
  readonly height: number;
  readonly slope: number;
}

/**
 * The local maxima between the given points, found where the slope turns from rising to falling: to the last digits,
 * which no search for the highest value alone can give. `at` is told the given point before x.
 */
export const summits = <H extends Height>(points: readonly H[], at: (x: number, before: H) => H): H[] => {
  const found: H[] = [];
  for (let i = 1; i < points.length; i++) {
    const [before, after] = [points[i - 1] as H, points[i] as H];
    if (!(before.slope > 0 && after.slope <= 0)) continue;
    // Told another point before it, a slope that is 0 but for rounding may turn its sign: then the given points are the top.
    const top = rootIfAny((x) => at(x, before).slope, before.x, after.x);
    if (top !== undefined) found.push(at(top, before));
  }
  return found;
};
