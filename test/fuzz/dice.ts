import fc from "fast-check";

/** A number from 0 up to 1. Everything a question is made of is thrown with such dice, so that all of it shrinks. */
export const die: fc.Arbitrary<number> = fc.integer({ min: 0, max: 999_999 }).map((k) => k / 1_000_000);

/** Makes something of a die. */
export type Throw<T> = (die: number) => T;

/** As a person types a number: five figures at most. */
export const typed = (value: number): number => Number(value.toPrecision(5));

export const linear =
  (from: number, to: number): Throw<number> =>
  (die) =>
    typed(from + (to - from) * die);

export const logarithmic =
  (from: number, to: number): Throw<number> =>
  (die) =>
    typed(from * (to / from) ** die);

export const whole =
  (from: number, to: number): Throw<number> =>
  (die) =>
    from + Math.floor((to - from + 1) * die);

export const oneOf =
  <T>(...things: readonly T[]): Throw<T> =>
  (die) =>
    things[Math.floor(things.length * die)] as T;

/** One of several throws, each as likely; its die is what is left of this one. */
export const either =
  <T>(...throws: readonly Throw<T>[]): Throw<T> =>
  (die) => {
    const at = Math.floor(throws.length * die);
    return (throws[at] as Throw<T>)(throws.length * die - at);
  };

/** Whether something happens that has a share of all cases. Dice are thrown to their ends more often than not: the middle decides. */
export const chance = (die: number, share: number): boolean => Math.abs(die - 0.5) < share / 2;
