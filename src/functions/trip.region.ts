import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { region } from "../trip/region";
import { injectionCaution, magneticCaution, polesCaution } from "./accounts/cautions";
import { rangeCautions, rangeSources, rangeSteps } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { bandPlot } from "./pictures/trip-band";

export default define({
  name: "TRIP.REGION",
  summary: "What a sound breaker does in the end at a steady current, and by which release.",
  parameters: {
    current: quantity("A", "the steady current through all poles, r.m.s."),
    rating,
    characteristic,
    ...conditions,
  },
  results: [
    {
      name: "region",
      unit: "",
      meaning:
        "holds; may hold or trip; trips, thermal; trips, thermal or magnetic; trips, magnetic; trips, magnetic not known (the setting would tell)",
    },
  ],
  answers: "row",
  sources: documents,
  cautions: [magneticCaution, polesCaution, injectionCaution],
  examples: [
    { cells: [20, 20, "C"], gives: ["holds"], worked: "the rated current is carried for ever, by its definition" },
    {
      cells: [25, 20, "C"],
      gives: ["may hold or trip"],
      worked: "1.25 × lies between 1.13 × (test a) and 1.45 × (test b) of IEC 60898-1 Table 7",
    },
    {
      cells: [60, 20, "C"],
      gives: ["trips, thermal"],
      worked: "3 × lies above 1.45 × and below 5 ×, the lower magnetic multiple of C",
    },
    {
      cells: [150, 20, "C"],
      gives: ["trips, thermal or magnetic"],
      worked: "7.5 × lies between 5 × and 10 ×, the magnetic band of C",
    },
    { cells: [200, 20, "C"], gives: ["trips, magnetic"], worked: "10 × is the upper magnetic multiple of C" },
    {
      cells: [60, 20, "UL 489"],
      gives: ["trips, magnetic not known"],
      worked: "3 × lies above 135 %; no setting was given",
    },
  ],
  calculate: (given) => [region(askedOf(given), given.current)],
  explain: (given, [answer]) => {
    const { current } = given;
    const asked = askedOf(given);
    return {
      steps: rangeSteps(asked, current, asked.rangeAt(current)),
      answer: `At ${say(current, "A")} a sound breaker ${answer === "holds" ? "holds" : String(answer)}.`,
      sources: rangeSources(asked),
      cautions: rangeCautions(asked),
    };
  },
  plot: (given) => {
    const { current } = given;
    const asked = askedOf(given);
    const samples = [0.01, 20000].map((y) => ({ x: current, y }));
    return bandPlot(asked, "Where the current lies", {
      current,
      points: [],
      lines: [{ name: say(current, "A"), role: "limit", samples }],
    });
  },
});
