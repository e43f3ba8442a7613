/**
 * Where a continuous f crosses zero between `from` and `to`, to the last digits of a double.
 * The ends must lie on different sides (one may be the root itself), else a RangeError is thrown; an infinite end value only says
 * which side.
 */
export const root = (f: (x: number) => number, from: number, to: number): number => {
  const found = rootIfAny(f, from, to);
  if (found === undefined) throw new RangeError(`no crossing between ${from} (${f(from)}) and ${to} (${f(to)})`);
  return found;
};

/**
 * The same where it is not sure that there is one: undefined when both ends lie on one side.
 * Inverse quadratic interpolation where it can be trusted, else bisection: Chandrupatla, Adv. Eng. Software 28 (1997) 145.
 */
export const rootIfAny = (f: (x: number) => number, from: number, to: number): number | undefined => {
  let [a, fa] = [from, f(from)];
  let [b, fb] = [to, f(to)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa < 0 ? fb > 0 : fa > 0 && fb < 0)) return undefined;
  let share = 0.5;
  for (;;) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (fx === 0) return x;
    // a becomes the newest point, b the end across the root, c the point that fell out.
    const [c, fc] = fx > 0 === fa > 0 ? [a, fa] : [b, fb];
    if (c === b) [b, fb] = [a, fa];
    [a, fa] = [x, fx];
    const least = (2 ** -52 * Math.min(Math.abs(a), Math.abs(b)) + Number.MIN_VALUE) / Math.abs(b - a);
    if (!(least < 0.5)) return Math.abs(fa) < Math.abs(fb) ? a : b;
    const across = (a - b) / (c - b);
    const down = (fa - fb) / (fc - fb);
    const smooth = down * down < across && (1 - down) * (1 - down) < 1 - across;
    const jump = ((fa / (fb - fa)) * fc) / (fb - fc) + ((((c - a) / (b - a)) * fa) / (fc - fa)) * (fb / (fc - fb));
    share = smooth ? Math.min(1 - least, Math.max(least, jump)) : 0.5;
  }
};
