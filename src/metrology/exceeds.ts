/**
 * Above a limit by more than the rounding of doubles: 0.00075 ÷ 0.0005 or 85.3 − 25.3 may come out a last digit too high,
 * and a value that equals its limit on paper must not fail it here.
 */
export const exceeds = (value: number, limit: number): boolean => value > limit + 1e-9 * Math.abs(limit);
