import fc from "fast-check";
import { die } from "./dice";
import type { Question } from "./question";
import { isAnswered, keepsToTheRoad } from "./road";
import { isWellExplained } from "./told";

/** How often a function was asked, and answered. */
export interface Share {
  asked: number;
  answered: number;
}

/** The smallest question that breaks a promise is looked for so long, ms: some of them are slow. */
const shrinking = 10_000;

/**
 * That questions keep everything a call owes; a sentence tells what is not kept. A die chooses the row that is explained.
 * Counts in `share`.
 */
export const promises = (questions: fc.Arbitrary<Question>, share: Share): fc.IProperty<[Question, number]> => {
  let giveUp = Infinity;
  return fc.property(questions, die, (question, row) => {
    if (Date.now() > giveUp) return;
    try {
      share.asked++;
      if (isAnswered(question, keepsToTheRoad(question))) share.answered++;
      isWellExplained(question, row);
    } catch (thrown) {
      giveUp = Math.min(giveUp, Date.now() + shrinking);
      throw thrown;
    }
  });
};

/** These take milliseconds a row with all that is held against them, and are asked so much less. */
const lessOften: Readonly<Record<string, number>> = {
  "THERMAL.FIT": 8,
  EXPLAIN: 8,
  "TRIP.RAMP": 4,
  "THERMAL.FORECAST": 4,
  "THERMAL.HOLDS": 4,
};

/** How many questions a function is asked where most are asked `numRuns`. */
export const runsOf = (name: string, numRuns: number): number => Math.ceil(numRuns / (lessOften[name] ?? 1));
