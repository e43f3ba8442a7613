// How the words of an answer are compared where a law compares them.

/** What a word weighs against the others; undefined: nothing. */
export type Words = (word: string) => number | undefined;

/** Words in their order, the least first. */
const inOrder =
  (...words: readonly string[]): Words =>
  (word) =>
    words.includes(word) ? words.indexOf(word) : undefined;

/** A value against its limit. */
export const found = inOrder("within the limit", "above the limit");

const trips = inOrder("trips", "may trip");
/** How well a breaker rides through a start; where the magnetic band is not known the verdict is compared with its like. */
export const ridden: Words = (verdict) => (verdict.includes("rides through") ? 2 : trips(verdict));

/** How sure a verdict is, whatever it says. */
export const sure: Words = (verdict) => (verdict === "too close to call" ? 0 : 1);

/** How well insulation is found. */
export const insulated: Words = (finding) => (finding.startsWith("meets") ? 1 : 0);
