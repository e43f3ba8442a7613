import { define } from "../definition/define";
import { type Given, optional, quantity, word } from "../definition/parameter";
import type { Step } from "../definition/step";
import { motorCeiling } from "../inrush/ceiling";
import type { Start } from "../inrush/margin";
import { ceilingPercent, ceilingSource } from "../inrush/nfpa70";
import { ratingsTried, type TriedRating, weakest } from "../inrush/rating";
import { NoAnswer } from "../metrology/no-answer";
import { say } from "../metrology/say";
import { asked } from "../trip/asked";
import type { Characteristic } from "../trip/characteristic";
import { type RatingList, ratingLists } from "../trip/standard-rating";
import { injectionCaution, magneticCaution, polesCaution, rideThroughCaution } from "./accounts/cautions";
import { rangeSources } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { start } from "./arguments/inrush";
import { bandPlot } from "./pictures/trip-band";

/** The characteristics that qualify are those of IEC 60898-1. */
const usualList = "IEC 60898-1";
/** An inverse-time breaker for the common motor. */
const motor = "squirrel cage";

const parameters = {
  ...start,
  characteristic,
  list: optional(word("the list of ratings to choose from", ["IEC 60898-1", "NEC 240.6(A)"]), usualList),
  fullLoad: optional(
    quantity(
      "A",
      "full-load current from the code's tables (INRUSH.MOTOR), to hold the rating against the code's ceiling",
    ),
    "no ceiling is looked at",
  ),
} as const;

export default define({
  name: "INRUSH.RATING",
  summary: "The smallest standard rating of a characteristic whose sound breakers all ride through a motor start.",
  parameters,
  results: [{ name: "rating", unit: "A", meaning: "the smallest of the list that is sure to ride through, from cold" }],
  answers: "row",
  sources: [...documents, ...ratingLists.map(({ source }) => source), ceilingSource],
  cautions: [
    rideThroughCaution,
    "The start is taken from cold and at its worst first peak, 2√2 times the start current, or twice the steady crest. With a known power factor, a preload or warm air ask INRUSH.MARGIN.",
    "A smaller rating may ride through as well, since not every sound breaker is the quickest; this one does whichever is fitted.",
    "The ceiling looked at is that of a squirrel-cage motor, 250 %; INRUSH.CEILING knows the others.",
    magneticCaution,
    polesCaution,
    injectionCaution,
  ],
  examples: [
    {
      cells: [40, 0.3, 8, "C"],
      gives: [16],
      worked:
        "by hand: 5 × 16 A is just twice 40 A, the crest of the worst peak; 13 A gives 65 A; at 2.5 × the strip has over 1 s",
    },
    {
      cells: [40, 0.3, 8, "B"],
      gives: [32],
      worked: "by hand: 3 × 32 A = 96 A is above twice 40 A, 3 × 25 A = 75 A is not",
    },
    {
      cells: [40, 0.3, 8, "D"],
      gives: [10],
      worked:
        "by hand: 8 A reaches the peak (10 × 8 A) but at 5 × the quickest strip (p = 1.45, τ = 2.5602 s) trips after 0.225 s, at 4 × after 2.5602 s × ln(16 ÷ 13.8975) = 0.361 s",
    },
    {
      cells: [40, 0.3, 8, "C", "NEC 240.6(A)", 8],
      gives: [20],
      worked: "by hand: of 15, 20 A the first with 5 × above twice 40 A is 20 A; 250 % of 8 A is 20 A",
    },
  ],
  calculate: (given) => [chosen(given).rating],
  explain: (given, [rating]) => {
    const tried = triedOf(given);
    const { startCurrent, startTime, fullLoad } = given;
    return {
      steps: [...tried.map(triedStep), ...ceilingSteps(fullLoad, Number(rating))],
      answer: `The smallest rating of ${listOf(given).name} that is sure to ride through ${say(startCurrent, "A")} for ${say(startTime, "s")} is ${say(Number(rating), "A")}.`,
      sources: [
        ...rangeSources(asked(Number(rating), given.characteristic, {})),
        listOf(given).source,
        ...(fullLoad === undefined ? [] : [ceilingSource]),
      ],
    };
  },
  plot: (given, [rating]) => {
    const { startCurrent: x, startTime } = given;
    return bandPlot(
      asked(Number(rating), given.characteristic, {}),
      `The start against the band of ${say(Number(rating), "A")}`,
      {
        current: x,
        points: [
          {
            name: `start: ${say(x, "A")} for ${say(startTime, "s")}`,
            role: "asked",
            x,
            y: startTime,
          },
        ],
      },
    );
  },
});

type Inputs = Given<typeof parameters>;

const listOf = ({ list = usualList }: Inputs): RatingList =>
  ratingLists.find(({ name }) => name === list) as RatingList;

const startOf = ({ startCurrent, startTime, runningCurrent }: Inputs): Start => ({
  current: startCurrent,
  seconds: startTime,
  running: runningCurrent,
});

const triedOf = (given: Inputs) => ratingsTried(named(given), startOf(given), listOf(given));

const named = ({ characteristic }: Inputs): Characteristic => {
  if ("rows" in characteristic)
    throw new NoAnswer(
      "characteristic: an own band tells no magnetic band, so no rating is sure to ride through; ask INRUSH.MARGIN for one rating.",
    );
  return characteristic;
};

const chosen = (given: Inputs): TriedRating => {
  const found = triedOf(given).at(-1) as TriedRating;
  if (given.fullLoad === undefined) return found;
  const { ceiling, nextSize, exception } = motorCeiling(given.fullLoad, motor);
  if (found.rating <= nextSize) return found;
  throw new NoAnswer(
    `full load: the smallest rating that is sure to ride through is ${say(found.rating, "A")}, above the code's ceiling of ${say(nextSize, "A")} (${ceilingPercent[motor]} % of ${say(given.fullLoad, "A")} is ${say(ceiling, "A")}); only if the motor will not start on that, up to ${say(exception, "A")} is allowed (430.52(C)(1)).`,
  );
};

const triedStep = ({ rating, margin }: TriedRating): Step => ({
  sentence: `${say(rating, "A")}: ${margin.verdict}`,
  plain: weakest(margin),
});

const ceilingSteps = (fullLoad: number | undefined, rating: number): readonly Step[] => {
  if (fullLoad === undefined) return [];
  const { nextSize } = motorCeiling(fullLoad, motor);
  return [
    {
      sentence: `The code's ceiling for a ${motor} motor, ${ceilingPercent[motor]} % of its full load, rounded up to a standard rating`,
      plain: `${say(rating, "A")} is not above ${say(nextSize, "A")}`,
    },
  ];
};
