/** What a terminal would obey instead of showing it: control characters, and those that turn the direction of writing. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be taken out.
const obeyed = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]+/g;

/** Longer than any sentence of ours; what a file brings along may be of any length. */
const MOST_CHARACTERS = 1000;

/** Words that may come from a file as one harmless line. */
export const plainLine = (text: string): string => shortened(text.replace(obeyed, "\ufffd"), MOST_CHARACTERS);

export const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most).replace(/[\ud800-\udbff]$/, "")} …` : text;
