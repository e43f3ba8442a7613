import { judged, type LoggedTest, tallies } from "../../src/bench/summary";
import { asked } from "../../src/trip/asked";
import { iec60898 } from "../../src/trip/iec60898";
import { type Trial, verdict } from "../../src/trip/verdict";

test.each([
  ["in range", "in range"],
  ["early", "out"],
  ["late", "out"],
  ["outside the computed band", "out"],
  ["did not trip in time", "out"],
  ["undecided until 3600 s", "undecided"],
  ["too close to call", "undecided"],
  [" In  Range ", "in range"],
])("%s counts as %s", (words, counted) => {
  expect(judged(words)).toBe(counted);
});

test.each(["", "ok", "pass", "undecided", "undecided until ", "in range?"])('"%s" is no verdict', (words) => {
  expect(judged(words)).toBeUndefined();
});

test("knows each word that a verdict on a 20 A C breaker comes in", () => {
  const breaker = asked(20, iec60898.C, {});
  const trial = (change: Partial<Trial>): string =>
    verdict(breaker, { current: 51, time: 30, outcome: "tripped", currentError: 0, timeError: 0, ...change }).verdict;
  expect(judged(trial({}))).toBe("in range"); // 1 to 60 s at 2.55 ×
  expect(judged(trial({ time: 0.5 }))).toBe("out"); // before 1 s
  expect(judged(trial({ time: 61 }))).toBe("out"); // after 60 s
  expect(judged(trial({ current: 60, time: 50 }))).toBe("out"); // outside the band at 3 ×, 42 s
  expect(judged(trial({ time: 70, outcome: "held" }))).toBe("out");
  expect(judged(trial({ time: 20, outcome: "held" }))).toBe("undecided");
  expect(judged(trial({ time: 59.9, timeError: 0.2 }))).toBe("undecided");
});

const row = (breaker: string, verdict: string): LoggedTest => {
  const found = judged(verdict);
  return { breaker, verdict: found ? { judged: found } : { missing: verdict } };
};

test("tests without a verdict are in no count, and each kind of them is named", () => {
  const [one, two] = tallies([
    row("P2", "late"),
    row("P1", "in range"),
    row("p2 ", "#N/A"),
    row("P2", "#N/A"),
    row("P2", "blank"),
  ]);
  expect(one?.breaker).toBe("P2");
  expect(one?.counts).toEqual({ "in range": 0, out: 1, undecided: 0 });
  expect([...(one?.missing ?? [])]).toEqual([
    ["#N/A", 2],
    ["blank", 1],
  ]);
  expect(two?.counts["in range"]).toBe(1);
});
