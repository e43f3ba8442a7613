/** A stretch of text to put in place of another. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

/** A text with all splices made; they must not overlap, and those at one place go in the order given. */
export const spliced = (text: string, splices: readonly Splice[]): string => {
  const pieces: string[] = [];
  let at = 0;
  for (const { from, to, put } of [...splices].sort((a, b) => a.from - b.from || a.to - b.to)) {
    pieces.push(text.slice(at, from), put);
    at = to;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
};
