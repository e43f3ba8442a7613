import { define } from "../definition/define";
import { column, list, optional } from "../definition/parameter";
import { tex } from "../definition/tex";
import { boardWatts } from "../enclosure/total";
import type { Way } from "../enclosure/watts";
import { say } from "../metrology/say";
import { exchangedCaution } from "./accounts/exchanged";
import { diversity, load, lossAtRating, otherWatts, poles, rating } from "./arguments/enclosure";

interface Board {
  readonly lossesAtRating: readonly number[];
  readonly ratings: readonly number[];
  readonly loads: readonly number[];
  readonly poles?: readonly number[];
  readonly otherWatts?: readonly number[];
  readonly diversity?: number;
}

const total = ({ lossesAtRating, ratings, loads, poles, otherWatts = [], diversity = 1 }: Board) => {
  const ways: Way[] = lossesAtRating.map((lossAtRating, i) => ({
    lossAtRating,
    rating: ratings[i] as number,
    load: loads[i] as number,
    poles: poles?.[i] ?? 1,
  }));
  const others = otherWatts.reduce((sum, watts) => sum + watts, 0);
  return { ...boardWatts(ways, others, diversity), others, count: ways.length };
};

export default define({
  name: "ENCLOSURE.TOTAL",
  summary: "The heat of a whole board: all its ways at their loads, and everything else inside.",
  parameters: {
    lossesAtRating: column({ ...lossAtRating, meaning: `${lossAtRating.meaning}, a row per way` }),
    ratings: column({ ...rating, meaning: `${rating.meaning}, a row per way` }),
    loads: column({ ...load, meaning: `${load.meaning}; a row per way` }),
    poles: optional(column({ ...poles, meaning: `${poles.meaning}, a row per way or one for all` }), "1 pole each"),
    otherWatts: optional(list(otherWatts), "nothing else"),
    diversity: optional(diversity, "1, every way at the load given"),
  },
  results: [
    { name: "total", unit: "W", meaning: "heat of all ways at diversity × load, and of the other devices" },
    { name: "largest single", unit: "W", meaning: "heat of the warmest way, as counted in the total" },
  ],
  answers: "row",
  sources: [
    { document: "Joule's law, P = I²·R", place: "the same resistance at both currents", standing: "handbook" },
    {
      document: "IEC 61439-1",
      edition: "2011",
      place: "5.4, rated diversity factor: every circuit of the group at factor × its rated current",
      standing: "from memory",
    },
  ],
  cautions: [
    "Loads that were measured take no diversity factor: they already are what the ways carry.",
    "Wiring, busbars, supplies and pilot lamps often make as much heat as the breakers: give them as other watts.",
    "The loads together cannot be more than what feeds the board; rated currents of all ways often are.",
  ],
  examples: [
    {
      cells: [
        [[4.5], [3.5]],
        [[20], [16]],
        [[20], [8]],
        [[1], [2]],
        [[4], [3]],
      ],
      gives: [13.25, 4.5],
      worked: "hand-worked: 4.5 W + 2 × 3.5 W ÷ 4 + 7 W = 4.5 + 1.75 + 7",
    },
    { cells: [5, 20, 20, 20], gives: [100, 100], worked: "hand-worked: one row of 20 poles, 20 × 5 W = 100 W" },
    {
      cells: [[[5], [5]], 20, [[20], [20]], 10, 10, 0.6],
      gives: [46, 18],
      worked: "hand-worked: 100 W × 0.6² + 10 W = 46 W; the larger way 50 W × 0.36 = 18 W",
    },
  ],
  calculate: (board) => {
    const { total: watts, largest } = total(board);
    return [watts, largest];
  },
  explain: (board) => {
    const { diversity = 1 } = board;
    const heat = total(board);
    const { count } = heat;
    const watts = say(heat.total, "W");
    const steps = [
      {
        sentence:
          count === 1
            ? "The way loses poles × loss at the rating × (load ÷ rating)²"
            : `Each of the ${count} ways loses poles × loss at the rating × (load ÷ rating)²; together`,
        tex: String.raw`\sum n\,P_n\left(\frac{I}{I_n}\right)^2 = ${tex(heat.ways, "W")}`,
        plain: `${count === 1 ? "one way" : `sum of ${count} ways`} = ${say(heat.ways, "W")}`,
      },
      ...(diversity < 1
        ? [
            {
              sentence: "With every circuit at factor × its current the heat goes with the square of the factor",
              tex: String.raw`P = f^2\sum P_i = ${tex(diversity)}^2 \cdot ${tex(heat.ways, "W")}`,
              plain: `${diversity}² × ${say(heat.ways, "W")} = ${say(heat.total - heat.others, "W")}`,
            },
            {
              sentence:
                "With some circuits at their whole current and the others off it goes with the factor itself, which is more; plan for this one if that is how the board is used",
              tex: String.raw`P = f\sum P_i + P_\mathrm{other} = ${tex(diversity)} \cdot ${tex(heat.ways)} + ${tex(heat.others)} = ${tex(heat.someFull, "W")}`,
              plain: `some full, some off: ${diversity} × ${say(heat.ways, "W")} + ${say(heat.others, "W")} = ${say(heat.someFull, "W")}`,
            },
          ]
        : []),
      {
        sentence: "Everything else inside is added as it is",
        tex: `P = ${tex(heat.total - heat.others)} + ${tex(heat.others)} = ${tex(heat.total, "W")}`,
        plain: `total = ${say(heat.total - heat.others, "W")} + ${say(heat.others, "W")} = ${watts}`,
      },
    ];
    const overloaded = board.loads.filter((load, i) => load > (board.ratings[i] as number)).length;
    return {
      steps,
      answer: `The board makes ${watts} of heat; ${count === 1 ? "its one way makes" : `its warmest way, number ${heat.largestWay + 1} of the ${count} counted, makes`} ${say(heat.largest, "W")}.`,
      cautions: [
        ...exchangedCaution(
          board.lossesAtRating.map((lossAtRating, i) => ({ lossAtRating, rating: board.ratings[i] as number })),
        ),
        ...(overloaded > 0 ? [`${overloaded} of ${count} ways carry more than their rating.`] : []),
      ],
    };
  },
});
