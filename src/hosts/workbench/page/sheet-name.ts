const longest = 31;

/** What a spreadsheet would not take as a sheet's name, in a sentence; undefined when the name will do. `others`: the other sheets. */
export const faultOfName = (name: string, others: readonly string[]): string | undefined => {
  if (name === "") return "A sheet needs a name.";
  if (name.length > longest) return `A sheet's name has at most ${longest} characters; this has ${name.length}.`;
  const forbidden = /[[\]:*?/\\]/.exec(name)?.[0];
  if (forbidden) return `A sheet's name cannot hold ${forbidden} (nor any of [ ] : * ? / \\).`;
  if (/^'|'$/.test(name)) return "A sheet's name cannot begin or end with an apostrophe.";
  if (/^history$/i.test(name)) return "Spreadsheets keep the name History for themselves.";
  const same = others.find((other) => other.toLowerCase() === name.toLowerCase());
  return same && `There is a sheet ${same} already.`;
};
