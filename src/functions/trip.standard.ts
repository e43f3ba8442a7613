import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { type Given, optional, quantity, word } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";
import { continuousFactor, continuousSource } from "../trip/nfpa70";
import { nextStandard, type RatingList, ratingLists } from "../trip/standard-rating";
import { rideThroughCaution } from "./accounts/cautions";

const parameters = {
  load: quantity("A", "the whole load current"),
  continuous: optional(
    quantity("A", "the part of the load that flows for three hours or more", z.number().check(z.nonnegative())),
    "all of the load with the NEC list, none with the IEC list",
  ),
  list: optional(word("the list of ratings to choose from", ["NEC 240.6(A)", "IEC 60898-1"]), "NEC 240.6(A)"),
} as const;

export default define({
  name: "TRIP.STANDARD",
  summary: "The next standard rating at or above a load, with 125 % of its continuous part.",
  parameters,
  results: [{ name: "rating", unit: "A", meaning: "the smallest standard rating that is at least what is needed" }],
  answers: "row",
  sources: [...ratingLists.map(({ source }) => source), continuousSource],
  cautions: [
    rideThroughCaution,
    "The 125 % is a rule of the NEC and is used with the IEC list only where a continuous part is given; a breaker listed for 100 % takes none.",
    "A rating from a list is not a choice of breaker: breaking capacity, voltage, poles and characteristic come on top.",
  ],
  examples: [
    { cells: [16], gives: [20], worked: "125 % of 16 A = 20 A, a row of NEC 240.6(A)" },
    { cells: [30, 10], gives: [35], worked: "30 A + 25 % of 10 A = 32.5 A; next row of NEC 240.6(A): 35 A" },
    { cells: [17, 0, "IEC 60898-1"], gives: [20], worked: "IEC 60898-1, 5.3.2: 16, 20 A" },
  ],
  calculate: (given) => [nextStandard(listOf(given), needed(given))],
  explain: (given, [rating]) => {
    const list = listOf(given);
    const { load } = given;
    const part = continuousOf(given);
    const adds = addsOf(given, list);
    return {
      steps: [
        {
          sentence:
            adds > 0
              ? "The load and a quarter of its continuous part"
              : "The load itself; no continuous part was given",
          tex: String.raw`${tex(load, "A")} + ${tex(adds)} \cdot ${tex(part, "A")} = ${tex(needed(given), "A")}`,
          plain: `${say(load, "A")} + ${say(adds, "")} × ${say(part, "A")} = ${say(needed(given), "A")}`,
        },
        { sentence: `The next rating of ${list.name}`, plain: say(Number(rating), "A") },
      ],
      answer: `The next standard rating is ${say(Number(rating), "A")}.`,
    };
  },
});

type Inputs = Given<typeof parameters>;

const listOf = ({ list = "NEC 240.6(A)" }: Inputs): RatingList =>
  ratingLists.find(({ name }) => name === list) as RatingList;

const addsOf = ({ continuous }: Inputs, list: RatingList): number =>
  continuous === undefined ? list.continuousAdds : continuousFactor - 1;

const continuousOf = ({ load, continuous = load }: Inputs): number => {
  if (continuous > load)
    throw new BadInput(`continuous: ${say(continuous, "A")} is more than the whole load of ${say(load, "A")}.`);
  return continuous;
};

const needed = (given: Inputs): number => given.load + addsOf(given, listOf(given)) * continuousOf(given);
