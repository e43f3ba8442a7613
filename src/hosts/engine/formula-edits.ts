/** Text to put at a place of a formula, instead of the next `drop` characters. */
export interface Edit {
  readonly at: number;
  readonly put: string;
  readonly drop?: number;
}

/** From the end, so that places before an edit stay true; of two at one place the one that drops more is made first, and so stands last. */
export const edited = (text: string, edits: readonly Edit[]): string =>
  [...edits]
    .sort((a, b) => b.at - a.at || (b.drop ?? 0) - (a.drop ?? 0))
    .reduce((line, { at, put, drop = 0 }) => line.slice(0, at) + put + line.slice(at + drop), text);
