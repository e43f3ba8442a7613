import { type LoggedTest, type Tally, tallies } from "../bench/summary";
import { sayText } from "../definition/cells";
import { define } from "../definition/define";
import { verdictCaution } from "./accounts/cautions";
import { breakers, verdicts } from "./arguments/bench";

export default define({
  name: "BENCH.SUMMARY",
  summary: "How many tests of each breaker of a log were in range, out of it, or undecided.",
  parameters: { breakers, verdicts },
  results: [
    { name: "breaker", unit: "", meaning: "in the order in which they first appear" },
    { name: "tests", unit: "", meaning: "tests with a verdict" },
    { name: "in range", unit: "", meaning: "verdict in range" },
    { name: "out", unit: "", meaning: "early, late, outside the computed band, or did not trip in time" },
    { name: "undecided", unit: "", meaning: "undecided until a time, or too close to call" },
    { name: "not counted", unit: "", meaning: "rows without a verdict: blank, or an error" },
  ],
  answers: "rows",
  sources: [{ document: "the words of TRIP.VERDICT", standing: "derived" }],
  cautions: [
    "One test out of range among many in range is still out: look at that row, not at the share.",
    "Outside the computed band counts as out, though it is not beyond a printed limit: the reason beside the verdict tells them apart.",
    "A row whose verdict is blank or an error is in none of the counts and is named in the last column; mend it.",
    verdictCaution,
  ],
  examples: [
    {
      cells: [
        [["P1-03"], ["P1-04"], ["P1-03"], ["p1-03 "], ["P1-04"]],
        [["in range"], ["late"], ["undecided until 3600 s"], ["in range"], [null]],
      ],
      gives: [
        ["P1-03", 3, 2, 0, 1, ""],
        ["P1-04", 1, 0, 1, 0, "1 blank"],
      ],
      worked: "counted by hand",
    },
  ],
  calculate: (given) => tallies(logOf(given)).map(rowOf),
  explain: (given) => {
    const all = tallies(logOf(given));
    const sum = (count: (tally: Tally) => number): number => all.reduce((total, tally) => total + count(tally), 0);
    const [out, undecided, missing] = [
      sum(({ counts }) => counts.out),
      sum(({ counts }) => counts.undecided),
      sum(missingOf),
    ];
    const wanting = all.filter((tally) => testsOf(tally) > tally.counts["in range"] || missingOf(tally) > 0);
    return {
      steps: [
        {
          sentence: "Each verdict counts once, by its words, for the breaker beside it",
          plain: `${sum(({ counts }) => counts["in range"])} in range + ${out} out + ${undecided} undecided = ${sum(testsOf)}`,
        },
        ...wanting.map((tally) => ({
          sentence: `${sayText(tally.breaker)} wants attention`,
          plain: `${tally.counts.out} out, ${tally.counts.undecided} undecided${missingOf(tally) > 0 ? `, not counted: ${sayMissing(tally)}` : ""}`,
        })),
      ],
      answer: `${all.length} ${all.length === 1 ? "breaker" : "breakers"}, tests with a verdict ${sum(testsOf)}: in range ${sum(testsOf) - out - undecided}, out ${out}, undecided ${undecided}${missing > 0 ? `; without a verdict, and not counted: ${missing}` : ""}.`,
    };
  },
});

const logOf = ({
  breakers,
  verdicts,
}: {
  breakers: readonly string[];
  verdicts: readonly LoggedTest["verdict"][];
}): readonly LoggedTest[] =>
  breakers.map((breaker, row) => ({ breaker, verdict: verdicts[row] as LoggedTest["verdict"] }));

const testsOf = ({ counts }: Tally): number => counts["in range"] + counts.out + counts.undecided;
const missingOf = ({ missing }: Tally): number => [...missing.values()].reduce((sum, count) => sum + count, 0);
const sayMissing = ({ missing }: Tally): string => [...missing].map(([kind, count]) => `${count} ${kind}`).join(", ");

const rowOf = (tally: Tally) => [
  tally.breaker,
  testsOf(tally),
  tally.counts["in range"],
  tally.counts.out,
  tally.counts.undecided,
  sayMissing(tally),
];
