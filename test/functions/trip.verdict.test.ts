import { call } from "../../src/definition/call";
import { type Argument, CellError } from "../../src/definition/cells";
import { explained } from "../../src/definition/explained";
import verdict from "../../src/functions/trip.verdict";

// What a tester does next. The printed points are those of IEC 60898-1 Table 7, IEC 60947-2 Table 6 and UL 489 7.1.2 for 20 A.

const cautions = (...args: Argument[]) => explained(verdict, args).cautions;
const advised = (...args: Argument[]) => cautions(...args).find((caution) => !caution.startsWith("A strip still warm"));

test("outside the computed band it is repeated where the document prints a limit", () => {
  expect(advised(60, 50, 20, "C")).toMatch(
    /^By itself this condemns no breaker\..*: 51 A from cold, a trip within 60 s, in air at 30 °C\.$/,
  );
  expect(advised(40, 1.5, 20, "C")).toMatch(/: 22\.6 A from cold, no trip for 3600 s, in air at 30 °C\.$/);
  expect(advised(120, 200, 20, "IEC 60947-2")).toMatch(
    /: 26 A straight after 3600 s at 21 A, a trip within 3600 s, in air at 30 °C\.$/,
  );
  expect(advised(60, 60, 20, "UL 489")).toMatch(/: 40 A from cold, a trip within 120 s, in air at 25 °C\.$/);
  expect(advised(40, 5, 20, "UL 489 typical")).toMatch(
    /: 20 A from cold, no trip until temperatures are stable, in air at 40 °C\.$/,
  );
});

test("on a cool bench a slow trip is repeated in air at the printed temperature", () => {
  expect(advised(51, 200, 20, "C", undefined, undefined, 15)).toMatch(/in air at 30 °C\.$/);
});

test("beyond a printed limit it is kept as found, and too close to call is no pass", () => {
  expect(advised(51, 75, 20, "C")).toMatch(/Keep this result as found/);
  expect(advised(51, 59.9, 20, "C", undefined, undefined, undefined, undefined, undefined, 0.5)).toMatch(
    /^Too close to call is no pass/,
  );
});

test("in range nothing is advised", () => {
  expect(advised(51, 30, 20, "C")).toMatch(/^A result on the bench is not a release to service/);
});

test("a quick trip asks whether the strip was cold, a slow one does not; a shot in the magnetic band wears the contacts", () => {
  expect(cautions(51, 0.9, 20, "C")[0]).toMatch(/^A strip still warm from the shot before trips early/);
  expect(cautions(40, 1.5, 20, "C")[0]).toMatch(/^A strip still warm from the shot before trips early/);
  expect(cautions(51, 75, 20, "C").join(" ")).not.toMatch(/still warm/);
  expect(cautions(150, 0.02, 20, "C").join(" ")).toMatch(/Every magnetic trip burns the contacts/);
  expect(cautions(90, 5, 20, "C").join(" ")).not.toMatch(/burns the contacts/);
});

const refused = (...args: Argument[]) => explained(verdict, args).refusal?.sentence;

test("a time typed as on a clock is told in seconds, both ways it may be meant", () => {
  // 1 × 60 + 35 and 1 × 3600 + 35 × 60; 60 + 35 with the hours told.
  expect(refused(51, "1:35", 20, "C")).toBe(
    'time: a number in s is wanted, not the text "1:35"; in seconds that is 95 if it means minutes:seconds, 5700 if hours:minutes.',
  );
  expect(refused(51, "0:01:35", 20, "C")).toMatch(/the text "0:01:35"; in seconds that is 95\.$/);
});

test("the letter and the number on a breaker's face are two arguments", () => {
  expect(refused(51, 12, 20, "c20")).toMatch(
    /"c20" is not known \(the characteristic alone is "C"; the number is the rating\); known are/,
  );
  expect(refused(51, 12, 20, "K")).toMatch(/"K" is not known; known are/);
  expect(refused(51, 12, 20, new CellError("#NAME?"))).toMatch(/stands in quotes: "C"\.$/);
});

test("a trip far below the rating asks what was typed", () => {
  const why = (...args: Argument[]) => call(verdict, args)[0]?.[1];
  expect(why(2.55, 75, 25, "D")).toMatch(
    /; only 0\.102 × the rating: was a multiple typed, or were columns swapped\?$/,
  );
  expect(why(20, 75, 25, "D")).not.toMatch(/multiple typed/);
  expect(why(0.4, 75, 1, "D")).not.toMatch(/multiple typed/);
});

test("a rating off the preferred list asks whether it stands in its place", () => {
  // 51 A is none of the preferred ratings of IEC 60898-1; smaller ones than 6 A are not listed there, and other documents have their own.
  const asks = (...args: Argument[]) =>
    cautions(...args).some((caution) => /none of the preferred ratings/.test(caution));
  expect(asks(20, 3600, 51, "C", "held")).toBe(true);
  expect(asks(51, 30, 20, "C")).toBe(false);
  expect(asks(5, 30, 2, "C")).toBe(false);
  expect(asks(60, 30, 30, "UL 489 typical")).toBe(false);
});
