import { benchPlan } from "./bench-plan";
import { breakerStudy } from "./breaker-study";
import { lessons } from "./lessons";
import { motorStarts } from "./motor-starts";
import { panelEstimate } from "./panel-estimate";
import type { Shelved } from "./ready-sheet";
import { testLog } from "./test-log";

interface Shelf {
  readonly name: string;
  readonly about: string;
  readonly sheets: readonly Shelved[];
}

/** What can be put into a workbook. */
export const shelves: readonly Shelf[] = [
  {
    name: "For the bench",
    about: "Yellow cells hold examples: type over them.",
    sheets: [
      {
        sheet: testLog,
        purpose: "A line for each trial, judged as it is typed.",
        begin:
          "Type a trial into row 2: rating, characteristic, current, time and outcome at least. The verdict stands at the right of the line, from column Q on.",
        holds: [
          "200 empty lines, with lists of words for characteristic, state and outcome",
          "start state, rest, air and leads, without which trials cannot be compared",
          "shortest and longest time, verdict and reason, heat and its share of the limit",
          "a line for each breaker: how many trials were in range",
        ],
      },
      {
        sheet: benchPlan,
        purpose: "The tests of one breaker in their order, and what source and leads must bear.",
        begin: "Type your breaker, leads and source over the yellow cells.",
        holds: ["current, times, rest and cautions of each step", "volts, volt-amperes and how warm the leads get"],
      },
      {
        sheet: breakerStudy,
        purpose: "One breaker learnt from its own trials.",
        begin:
          "Type rating, characteristic and air over the yellow cells, then the trials from row 7 on, or paste them.",
        holds: [
          "50 empty lines for the trials of one breaker",
          "its pickup, time constant and scatter, each with limits",
          "when it trips next, how likely it holds, whether it stands a motor's start",
        ],
      },
      {
        sheet: motorStarts,
        purpose: "What motors draw at their start, and whether a breaker rides through.",
        begin:
          "Type a nameplate over the yellow line, then a line a motor; rating and characteristic of its breaker stand further right.",
        holds: [
          "20 lines for nameplates",
          "full load, locked rotor, first peak, the code's ceilings",
          "four margins and a verdict",
        ],
      },
      {
        sheet: panelEstimate,
        purpose: "How warm a board gets inside, and which way runs short first.",
        begin: "Type your cabinet and its ways over the yellow cells, a line a way.",
        holds: ["the cabinet, and 48 lines for its ways", "heat, air inside, re-rated currents and margins"],
      },
    ],
  },
  {
    name: "Lessons",
    about:
      "Each a question, formulas, what the answer says, what to change and what to look for, and one answer explained.",
    sheets: lessons,
  },
];
