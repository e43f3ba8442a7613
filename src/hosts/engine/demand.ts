/** Checks that the engine is made as a cure expects it: another version stops with a sentence, never with a wrong number. */
export const demand = (held: boolean, what: string): void => {
  if (!held) throw new Error(`The grid engine is not the one this program was written for (0.25.1): ${what}.`);
};
