import { combinedUncertainty, coverageFactor, effectiveDegrees } from "./uncertainty";

/** A measured value with its standard uncertainty and the degrees of freedom of that (Infinity: from a specification). */
export interface Measured {
  readonly value: number;
  readonly u: number;
  readonly degrees: number;
}

/** What comes of two measured values, and what each of them brings to its uncertainty. */
export interface Propagated extends Measured {
  /** cᵢ·u(xᵢ) of the first and the second value, signed, in the unit of the result. */
  readonly contributions: readonly [number, number];
  /** Coverage factor for about 95 %, and the expanded uncertainty with it. */
  readonly k: number;
  readonly expanded: number;
}

type Pair = readonly [Measured, Measured];

/** a·b by the law of propagation, first order. */
export const product = (pair: Pair, correlation: number): Propagated => {
  const [a, b] = pair;
  return propagated(pair, { value: a.value * b.value, sensitivities: [b.value, a.value], correlation });
};

/** a ÷ b by the law of propagation, first order. */
export const quotient = (pair: Pair, correlation: number): Propagated => {
  const [a, b] = pair;
  return propagated(pair, {
    value: a.value / b.value,
    sensitivities: [1 / b.value, -a.value / (b.value * b.value)],
    correlation,
  });
};

interface Model {
  readonly value: number;
  readonly sensitivities: readonly [number, number];
  readonly correlation: number;
}

const propagated = ([a, b]: Pair, { value, sensitivities, correlation }: Model): Propagated => {
  const contributions = [sensitivities[0] * a.u, sensitivities[1] * b.u] as const;
  const u = combinedUncertainty(contributions, () => correlation);
  // The formula of Welch and Satterthwaite is for independent inputs; for correlated ones the smaller number is on the careful
  // side, and it is the right one for pairs read together n times.
  const degrees =
    correlation === 0
      ? effectiveDegrees([
          { amount: contributions[0], degrees: a.degrees },
          { amount: contributions[1], degrees: b.degrees },
        ])
      : Math.min(a.degrees, b.degrees);
  const k = coverageFactor(degrees);
  return { value, contributions, u, degrees, k, expanded: k * u };
};
