import * as z from "zod/mini";
import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { fieldLimit, fieldMultiple, table1007, voltageInWords, voltages } from "../trip/neta";
import { injectionCaution, verdictCaution } from "./accounts/cautions";

const usualVoltage = voltages.low;

export default define({
  name: "TRIP.FIELDLIMIT",
  summary:
    "The longest time in which a moulded-case breaker should trip at 300 % of its rating in a field test. A maximum; there is no minimum.",
  parameters: {
    rating: quantity("A", "the breaker's rated continuous current"),
    ratedVoltage: optional(
      quantity(
        "V",
        "the voltage marked on the breaker, not that of the test source",
        z.number().check(z.minimum(100)),
        {
          hint: "the breaker's own marked voltage is meant, not the few volts of the source",
        },
      ),
      `${voltageInWords(usualVoltage)}, the shorter limit`,
    ),
  },
  results: [{ name: "longest", unit: "s", meaning: "at 300 %, from cold" }],
  answers: "row",
  sources: [table1007],
  cautions: [
    "The table's values are from memory: compare with the page before a breaker is condemned by them.",
    "Integrally fused breakers tested with solid links may take substantially longer (from memory).",
    "Set the current quickly, from cold, and record the breaker as found before exercising it.",
    verdictCaution,
    injectionCaution,
  ],
  examples: [
    { cells: [20], gives: [50], worked: "NETA table 100.7, 0 to 30 A, up to 250 V (from memory)" },
    { cells: [100, 480], gives: [160], worked: "NETA table 100.7, 51 to 100 A, 251 to 600 V (from memory)" },
  ],
  calculate: ({ rating, ratedVoltage = usualVoltage }) => [fieldLimit(rating, ratedVoltage)],
  explain: ({ rating, ratedVoltage = usualVoltage }, [limit]) => ({
    steps: [
      {
        sentence: `The row of ${say(rating, "A")} and the column of ${voltageInWords(ratedVoltage)}`,
        plain: `within ${say(Number(limit), "s")} at ${say(fieldMultiple * rating, "A")}`,
      },
    ],
    answer: `At 300 %, ${say(fieldMultiple * rating, "A")}, it should trip within ${say(Number(limit), "s")}.`,
  }),
});
