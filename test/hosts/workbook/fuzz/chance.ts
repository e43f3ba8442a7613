/** Chance from a seed: the same seed gives the same file on every machine (the generator is mulberry32, public domain). */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 up to 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  }

  /** A whole number from 0, below `limit`. */
  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }

  pick<T>(things: readonly T[]): T {
    return things[this.below(things.length)] as T;
  }

  /** Whether something happens that happens in one of so many cases. */
  oneIn(cases: number): boolean {
    return this.below(cases) === 0;
  }
}
