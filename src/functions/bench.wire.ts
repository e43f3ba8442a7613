import { testWire, testWireTables } from "../bench/test-wire";
import { suggestedFrom } from "../bench/ul489";
import { define } from "../definition/define";
import { say } from "../metrology/say";
import { rating, usualWireStandard, wireStandard } from "./arguments/bench";

export default define({
  name: "BENCH.WIRE",
  summary: "The copper conductor, and how much of it, that a document wants at each terminal of a breaker under test.",
  parameters: { rating, standard: wireStandard },
  results: [
    {
      name: "size",
      unit: "",
      meaning: "of the copper conductor, with its unit; several in parallel, or bars, where the table says so",
    },
    { name: "length", unit: "m", meaning: "at least this much at each terminal" },
  ],
  answers: "row",
  sources: [...new Set(Object.values(testWireTables).map(({ source }) => source))],
  cautions: [
    "Nearly all of these rows are from memory: compare them with the page before a test is reported by them.",
    "The conductor is part of the test: a thicker or shorter one cools the breaker and it trips later, a thinner one warms it.",
    "For tests only; the installation rules choose the conductor of a circuit.",
  ],
  examples: [
    {
      cells: [16],
      gives: ["2.5 mm²", 1],
      worked: "IEC 60898-1 Table 10: above 13 A up to 20 A, 2.5 mm², 1 m (from memory)",
    },
    {
      cells: [63, "IEC 60947-2"],
      gives: ["16 mm²", 1],
      worked:
        "IEC 60947-1 tables of test conductors: above 50 A up to 65 A, 16 mm²; at least 1 m up to 35 mm² (from memory)",
    },
    {
      cells: [20, "UL 489"],
      gives: ["12 AWG", 1.2],
      worked: "NEMA AB 4: not less than 4 ft; 20 A: 12 AWG (from memory)",
    },
    {
      cells: [100, "UL 489 75 °C"],
      gives: ["3 AWG", 1.2],
      worked: "the NEC's table of ampacities, 75 °C column: 3 AWG carries 100 A",
    },
  ],
  calculate: ({ rating, standard = usualWireStandard }) => {
    const { size, metres } = testWire(standard, rating);
    return [size, metres];
  },
  explain: ({ rating, standard = usualWireStandard }, [size, metres]) => {
    const row = testWire(standard, rating);
    const { source } = testWireTables[standard];
    return {
      steps: [
        {
          sentence: `The first row of the table that reaches ${say(rating, "A")}; between two rows the thicker conductor counts`,
          plain: `the row up to ${say(row.upTo, "A")}: ${row.size}, ${say(row.metres, "m")}`,
        },
      ],
      answer: `At least ${say(Number(metres), "m")} of ${size} at each terminal.`,
      sources: [{ ...source, standing: row.standing ?? source.standing }],
      cautions:
        source.document === "UL 489" && row.upTo >= suggestedFrom
          ? [
              `From ${suggestedFrom} A up the row follows from ampacities alone and is a suggestion, not the standard's.`,
            ]
          : [],
    };
  },
});
