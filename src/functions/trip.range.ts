import { define } from "../definition/define";
import { quantity } from "../definition/parameter";
import { say } from "../metrology/say";
import { injectionCaution, magneticCaution, polesCaution } from "./accounts/cautions";
import { longestAnswer, rangeCautions, rangeSources, rangeSteps, shortestAnswer } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";
import { bandPlot } from "./pictures/trip-band";

export default define({
  name: "TRIP.RANGE",
  summary: "The shortest and the longest time in which a sound breaker may trip at a steady current.",
  parameters: {
    current: quantity("A", "the steady current through all poles, r.m.s."),
    rating,
    characteristic,
    ...conditions,
  },
  results: [
    {
      name: "shortest",
      unit: "s",
      meaning: "a sound breaker never trips sooner; 0: no minimum; holds: it need never trip",
    },
    { name: "longest", unit: "s", meaning: "a sound breaker has tripped by then; no limit: it may hold for ever" },
  ],
  answers: "row",
  sources: documents,
  cautions: [magneticCaution, polesCaution, injectionCaution],
  examples: [
    {
      cells: [51, 20, "C"],
      gives: [1, 60],
      worked: "IEC 60898-1 Table 7, test c: 2.55 × not within 1 s, within 60 s up to 32 A",
    },
    { cells: [51, 20, "D"], gives: [1, 60], worked: "IEC 60898-1 Table 7, test c, the same for B, C and D" },
    {
      cells: [24, 20, "C"],
      gives: [9.96, "no limit"],
      within: 1e-3,
      worked:
        "by hand: the quickest strip has p = 1.13 and τ = 1 s ÷ ln(2.55²/(2.55² − 1.13²)) = 4.574 s; 4.574 s × ln(1.44 ÷ 0.1631) = 9.96 s",
    },
    {
      cells: [22.6, 20, "C"],
      gives: [3600, "no limit"],
      worked: "IEC 60898-1 Table 7, test a: 1.13 × for 1 h without tripping",
    },
    {
      cells: [20, 20, "C"],
      gives: ["holds", "no limit"],
      worked: "the rated current is carried for ever, by its definition",
    },
    { cells: [200, 20, "C"], gives: [0, 0.1], worked: "IEC 60898-1 Table 7, test e: 10 × trips within 0.1 s" },
    {
      cells: [29, 20, "C", 22.6],
      gives: [0, 3600],
      worked: "IEC 60898-1 Table 7, test b: 1.45 × straight after 1.13 ×, within 1 h",
    },
    {
      cells: [60, 20, "UL 489"],
      gives: [0, 49.13],
      within: 1e-3,
      worked: "by hand: the slowest strip has p = 1 and τ = 120 s ÷ ln(4/3) = 417.1 s; 417.1 s × ln(9/8) = 49.13 s",
    },
  ],
  calculate: (given) => {
    const range = askedOf(given).rangeAt(given.current);
    return [shortestAnswer(range), longestAnswer(range)];
  },
  explain: (given, [shortest, longest]) => {
    const { current } = given;
    const asked = askedOf(given);
    const range = asked.rangeAt(current);
    const from = shortest === "holds" ? "need never trip" : `trips not before ${say(shortest ?? 0, "s")}`;
    const to = longest === "no limit" ? "and may hold for ever" : `and within ${say(longest ?? 0, "s")}`;
    return {
      steps: rangeSteps(asked, current, range),
      answer:
        shortest === "holds"
          ? `At ${say(current, "A")} a sound breaker need never trip: it holds.`
          : `At ${say(current, "A")} a sound breaker ${from} ${to}.`,
      sources: rangeSources(asked),
      cautions: rangeCautions(asked),
    };
  },
  plot: (given) => {
    const { current } = given;
    const asked = askedOf(given);
    const { shortest, longest } = asked.rangeAt(current);
    const points = [shortest, longest]
      .filter(({ seconds }) => Number.isFinite(seconds) && seconds > 0)
      .map(({ seconds }, i) => ({
        name: `${i === 0 && shortest.seconds === seconds ? "shortest" : "longest"} at ${say(current, "A")}`,
        role: "asked" as const,
        x: current,
        y: seconds,
      }));
    return bandPlot(asked, "When a sound breaker trips", { current, points });
  },
});
