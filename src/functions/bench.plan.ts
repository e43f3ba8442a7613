import { type PlannedBreaker, testPlan } from "../bench/plan";
import { planSources } from "../bench/plan-sources";
import type { PlanStep } from "../bench/plan-step";
import { restSeconds, sayLong } from "../bench/rest";
import { testWireTables } from "../bench/test-wire";
import { powerLossSource } from "../contact/iec60898";
import { define, type Row } from "../definition/define";
import { type Given, optional } from "../definition/parameter";
import { NoAnswer } from "../metrology/no-answer";
import { say } from "../metrology/say";
import type { Fitted } from "../thermal/fitted";
import { asked } from "../trip/asked";
import { injectionCaution, magneticCaution, polesCaution, verdictCaution } from "./accounts/cautions";
import { fitCautions, planSteps, timeConstantOf } from "./accounts/plan";
import { rangeCautions, rangeSources } from "./accounts/trip-range";
import { documents } from "./accounts/trip-sources";
import { poles, rating } from "./arguments/bench";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions } from "./arguments/conditions";
import { fit } from "./arguments/fit";
import { planPlot } from "./pictures/plan";

const parameters = {
  rating,
  characteristic,
  poles,
  fit: optional(fit, "rests for the slowest strip that a sound breaker may have"),
  setting: conditions.setting,
} as const;

export default define({
  name: "BENCH.PLAN",
  summary:
    "A test plan for one breaker, line by line: what to do, at which current, between which times it trips, when to stop, how long to rest.",
  parameters,
  results: [
    { name: "step", unit: "", meaning: "what is done, in this order" },
    { name: "current", unit: "A", meaning: "through the poles; not known: the marked setting tells" },
    {
      name: "shortest",
      unit: "s",
      meaning: "a sound breaker never trips sooner; 0: no minimum; holds: it need never trip",
    },
    { name: "longest", unit: "s", meaning: "a sound breaker has tripped by then; no limit: it need not trip" },
    { name: "stop watching at", unit: "s", meaning: "nothing more is to be learned then: the source is switched off" },
    { name: "rest before", unit: "s", meaning: "without current, at least; 0: straight after the line above" },
    { name: "caution", unit: "", meaning: "what this line may do to the tester or the breaker, and how it is judged" },
  ],
  answers: "rows",
  sources: [
    ...documents,
    ...planSources,
    powerLossSource,
    ...Object.values(testWireTables).map(({ source }) => source),
  ],
  cautions: [
    "A plan to be read by somebody who is trained for it: it replaces neither the standard nor the rules of the place. Two persons are good practice.",
    injectionCaution,
    verdictCaution,
    polesCaution,
    magneticCaution,
    "Do not open a sealed case, and never switch on again and again after a trip.",
  ],
  examples: [
    {
      cells: [16, "C"],
      gives: [
        ["look it over; close and open it once", "", "", "", "", ""],
        ["insulation: line to load open; to frame closed", "", "", "", 60, ""],
        ["drop at the rating, settled", 16, "holds", "no limit", 3600, ""],
        ["hold at 1.13 ×, as found (test a)", 18.08, 3600, "no limit", 3600, 1263.9],
        ["trip at 1.45 × straight after (test b)", 23.2, 0, 3600, 3600, 0],
        ["trip at 2.55 × (test c)", 40.8, 1, 60, 60, 1263.9],
        ["no trip at 5 × for 0.1 s (test d)", 80, 0.2249, 14.3886, 0.1, 1263.9],
        ["magnetic trip at 10 × (test e)", 160, 0, 0.1, 0.1, 1263.9],
      ],
      within: 2e-4,
      worked:
        "IEC 60898-1 Table 7; the rest by hand: slowest strip 60 s ÷ ln(2.55² ÷ (2.55² − 1.13²)) = 274.45 s, × ln 100; at 5 × that strip takes 274.45 s × ln(25 ÷ (25 − 1.13²)) = 14.389 s, the quickest (p = 1.45) 2.5602 s × ln(25 ÷ (25 − 1.45²)) = 0.2249 s",
    },
    {
      cells: [20, "UL 489"],
      gives: [
        ["look it over; close and open it once", "", "", "", "", ""],
        ["insulation: line to load open; to frame closed", "", "", "", 60, ""],
        ["drop at the rating, settled", 20, "holds", "no limit", 1920.94, ""],
        ["trip at 300 %, as found", 60, 0, 49.13, 70, 1920.94],
        ["or, in place of 300 %: trip at 200 %, as found", 40, 0, 120, 120, 1920.94],
        ["trip at 135 %", 27, 0, 3600, 3600, 1920.94],
        ["magnetic trip, last", "not known", "not known", "not known", 5, 1920.94],
      ],
      within: 1e-4,
      worked:
        "UL 489: 120 s at 200 %, 1 h at 135 %; the rest by hand: slowest strip 120 s ÷ ln(4 ÷ 3) = 417.127 s, × ln 100; 417.127 s × ln(9 ÷ 8) = 49.13 s; NETA table 100.7: 70 s up to 600 V",
    },
    {
      cells: [63, "IEC 60947-2", null, null, 500],
      gives: [
        ["look it over; close and open it once", "", "", "", "", ""],
        ["insulation: line to load open; to frame closed", "", "", "", 60, ""],
        ["drop at the rating, settled", 63, "holds", "no limit", 3600, ""],
        ["hold at 1.05 ×, as found", 66.15, 3600, "no limit", 3600, 24668],
        ["trip at 1.3 × straight after", 81.9, 0, 3600, 3600, 0],
        ["no magnetic trip at 0.8 × the marked setting for 0.2 s", 400, 0, 148.54, 0.2, 24668],
        ["magnetic trip at 1.2 × the marked setting", 600, 0, 0.2, 0.2, 24668],
      ],
      within: 2e-4,
      worked:
        "IEC 60947-2: 1.05 × for 1 h, then 1.3 × within 1 h, magnet 0.8 to 1.2 × of the setting; the rest by hand: of the slowest strip (p = 1.05) x = e^(−1 h ÷ τ) solves 1.1025·x² + 0.5875·x = 0.5875, so τ = 5356.6 s, × ln 100; at 400 A 5356.6 s × ln(40.3124 ÷ 39.2099) = 148.54 s",
    },
  ],
  calculate: (given) => testPlan(plannedOf(given)).map(rowOf),
  explain: (given, _, rows) => {
    const planned = plannedOf(given);
    const question = asked(planned.rating, planned.characteristic, { setting: planned.setting });
    return {
      steps: planSteps(planned),
      answer: `${rows.length} lines for a ${say(planned.rating, "A")} "${planned.characteristic.name}" breaker of ${planned.poles} ${planned.poles === 1 ? "pole" : "poles"}; from cold each time a rest of ${sayLong(restSeconds(timeConstantOf(planned)))}, and until the terminals are back at room temperature.`,
      sources: [...rangeSources(question), ...planSources],
      cautions: [...fitCautions(planned, given.fit), ...rangeCautions(question)],
    };
  },
  plot: (given) => planPlot(plannedOf(given)),
});

type Inputs = Given<typeof parameters>;

const plannedOf = ({ rating, characteristic, poles = 1, fit, setting }: Inputs): PlannedBreaker => {
  if ("rows" in characteristic)
    throw new NoAnswer(
      'characteristic: a plan follows the tests of a standard, and an own band has none; ask by a name such as "C" or "UL 489".',
    );
  // Refuses a setting beside a characteristic that has its band printed.
  askedOf({ rating, characteristic, setting });
  return { rating, characteristic, poles, timeConstant: fit && careful(fit), setting };
};

/** The slow end of what the trials allow, where they bound it. */
const careful = ({ timeConstant: { value, high } }: Fitted): number => (typeof high === "number" ? high : value);

const rowOf = ({ step, current, band, stopAt, rest, caution }: PlanStep): Row => [
  step,
  current ?? "",
  ...bandOf(band),
  stopAt ?? "",
  rest ?? "",
  caution,
];

const bandOf = (band: PlanStep["band"]): readonly [number | string, number | string] => {
  if (band === undefined) return ["", ""];
  if (band === "not known") return [band, band];
  return [
    Number.isFinite(band.shortest) ? band.shortest : "holds",
    Number.isFinite(band.longest) ? band.longest : "no limit",
  ];
};
