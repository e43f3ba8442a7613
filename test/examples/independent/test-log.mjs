// What the formulas of test-log.xlsx must answer, from what is typed in it.

import { lossLimit, printedTests } from "./printed-tests.mjs";
import { rangeOf } from "./strips.mjs";
import { verdictOf } from "./verdict.mjs";
import { linesOf } from "./workbook.mjs";

const isNumber = (value) => typeof value === "number";
const inWords = (seconds, forEver) => (Number.isFinite(seconds) ? seconds : forEver);

const rangeAnswers = ({ current, rating, name, air, carried }) => {
  const characteristic = printedTests[name];
  if (!isNumber(current) || !characteristic || air < -40 || air > 60) return "#VALUE!";
  const kind = characteristic(rating);
  return kind ? { kind, ...rangeOf({ name, kind, rating, current, carried: carried ?? 0, air }) } : "#N/A";
};

const contactAnswers = ({ current, rating, drop, name }) => {
  if (drop === null) return {};
  if (!isNumber(current)) return { watts: "#VALUE!", share: "#VALUE!", atRating: "#VALUE!", finding: "#VALUE!" };
  const watts = current * drop;
  if (name.startsWith("UL")) return { watts };
  const limit = lossLimit(rating);
  if (limit === undefined) return { watts, share: "#N/A", atRating: "#N/A", finding: "#N/A" };
  const atRating = watts * (rating / current) ** 2;
  return {
    watts,
    share: atRating / limit,
    atRating,
    finding: atRating > limit ? "above the limit" : "within the limit",
  };
};

const trialOf = (line) => ({
  trial: line.Trial,
  breaker: line.Breaker,
  rating: line["Rating, A"],
  name: line.Characteristic,
  state: line.State,
  current: line["Current, A"],
  drop: line["Drop, V"],
  time: line["Time, s"],
  outcome: line.Outcome,
  carried: line["Carried before, A"],
  air: line["Air, °C"],
});

const judged = (trial) => {
  const range = rangeAnswers(trial);
  const { watts, share, atRating, finding } = contactAnswers(trial);
  const isRefused = typeof range === "string";
  const verdict = isRefused
    ? { verdict: range, why: range }
    : trial.time === null || trial.outcome === null
      ? { verdict: "#VALUE!", why: "#VALUE!" }
      : verdictOf({ ...trial, kind: range.kind, carried: trial.carried ?? 0 }, range);
  return {
    Trial: trial.trial,
    "Shortest, s": isRefused ? range : inWords(range.shortest, "holds"),
    "Longest, s": isRefused ? range : inWords(range.longest, "no limit"),
    Verdict: verdict.verdict,
    // A why is prose: an ellipsis says that only its beginning is expected.
    Why: verdict.why.startsWith("#") ? verdict.why : `${verdict.why}…`,
    "Heat, W": watts ?? "",
    "Share of limit": share ?? "",
    "Heat at rating, W": atRating ?? "",
    Finding: finding ?? "",
  };
};

const summed = ({ Breaker: tag, "Rating, A": rating, Characteristic: name }, trials, answers) => {
  const own = trials.map((trial, i) => ({ ...trial, ...answers[i] })).filter(({ breaker }) => breaker === tag);
  const count = (begins) => own.filter(({ Verdict }) => begins.some((word) => Verdict.startsWith(word))).length;
  const warm = own.filter(
    ({ state, outcome, current }) => state === "as found" && outcome === "held" && current === rating,
  );
  const drop = warm.reduce((sum, { drop }) => sum + drop, 0) / warm.length;
  const limit = name.startsWith("UL") ? undefined : lossLimit(rating);
  return {
    Breaker: tag,
    "Summary of": tag,
    Judged: own.length - count(["#"]),
    "In range": count(["in range"]),
    Out: count(["early", "late", "outside", "did not trip"]),
    Undecided: count(["undecided"]),
    "Not counted": ["#VALUE!", "#N/A"]
      .filter((error) => count([error]))
      .map((error) => `${count([error])} ${error}`)
      .join(", "),
    "Warm drop, V": drop,
    "Heat, W": rating * drop,
    "Limit, W": limit ?? "",
    "Limit, V": limit === undefined ? "" : limit / rating,
  };
};

export const testLog = async () => {
  const trials = (await linesOf("test-log.xlsx", "Log", "Trial")).map(trialOf);
  const log = trials.map(judged);
  const breakers = await linesOf("test-log.xlsx", "Breakers", "Breaker");
  return {
    "test-log.expected.csv": log,
    "test-log.breakers.expected.csv": breakers.map((line) => summed(line, trials, log)),
  };
};
