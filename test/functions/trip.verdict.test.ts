import type { Argument } from "../../src/definition/cells";
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
