/** Words that say nothing of what is looked for. */
const little = new Set(
  "a an and are at be by can do does down for from get gets how i in is it long many may much my of on or the this to too what when which with".split(
    " ",
  ),
);

/** What people of a bench call one matter: any of these words finds what is told in any other. */
const kin = [
  "hot warm heat temperature",
  "cool rest wait pause",
  "motor compressor saw pump fan",
  "transformer toroid welder",
  "inrush surge start starting",
  "nuisance ride rides margin",
  "verdict early late pass fail",
  "rerated derate derating ambient",
  "enclosure board panel cabinet cupboard box",
  "meter multimeter clamp instrument",
  "uncertainty uncertain accuracy sure tolerance",
  "wire cable lead conductor",
  "drop millivolt mv",
  "terminal screw torque loose",
  "time long shortest seconds",
  "curve band chart graph",
  "log trial trials record",
  "multiple turns",
].map((words) => words.split(" "));

/** The words that matter of what was typed, each without the s of its plural. */
export const wordsOf = (typed: string): string[] =>
  typed
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word && !little.has(word))
    .map((word) => (word.length > 3 ? word.replace(/([^s])s$/, "$1") : word));

/** Other words for the same matter. */
export const kinOf = (word: string): string[] =>
  kin.filter((words) => words.includes(word) || words.includes(`${word}s`)).flat();
