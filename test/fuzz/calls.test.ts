import fc from "fast-check";
import { promises, runsOf, type Share } from "./promises";
import { questions } from "./questions";

// What every call owes, whatever stands in its cells: see road.ts and told.ts. `npm run fuzz` asks millions of such questions.

const each = 160;

test.each([...questions])("%s keeps its promises, and answers at least half of the questions", (name, question) => {
  const share: Share = { asked: 0, answered: 0 };
  fc.assert(promises(question, share), { numRuns: runsOf(name, each) });
  expect(share.answered / share.asked).toBeGreaterThanOrEqual(0.5);
});
