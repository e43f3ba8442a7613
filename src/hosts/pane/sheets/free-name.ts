/** As many characters as the name of a sheet may have. */
const longest = 31;

/** A name that nothing has yet, numbered where need be: "Test log", else "Test log 2". Case makes no difference. */
export const freeName = (wanted: string, taken: readonly string[], before = " "): string => {
  const known = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n++) {
    const number = n === 1 ? "" : `${before}${n}`;
    const name = `${wanted.slice(0, longest - number.length)}${number}`;
    if (!known.has(name.toLowerCase())) return name;
  }
};
