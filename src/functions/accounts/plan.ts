import type { PlannedBreaker } from "../../bench/plan";
import { cold, restSeconds, sayLong } from "../../bench/rest";
import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import { say } from "../../metrology/say";
import type { Fitted } from "../../thermal/fitted";
import { type Bench, benchOf } from "../../trip/conditions";

const benchFor = ({ rating, characteristic, setting }: PlannedBreaker): Bench =>
  benchOf({ rating, characteristic }, { setting });

/** s, of the breaker itself, or of the slowest sound one. */
export const timeConstantOf = (planned: PlannedBreaker): number =>
  planned.timeConstant ?? benchFor(planned).envelope.slowestTimeConstant;

/** The order of a plan, and how its rests come about. */
export const planSteps = (planned: PlannedBreaker): readonly Step[] => {
  const timeConstant = timeConstantOf(planned);
  const rest = restSeconds(timeConstant);
  return [
    {
      sentence:
        "The order: what only looks, then what warms gently, then the trips as found before anybody exercises it, the magnetic release last",
    },
    {
      sentence: planned.timeConstant
        ? "This breaker's own time constant, at the slow end of what its trials allow"
        : "The slowest strip that meets the printed points has this time constant; most breakers cool sooner, as a fit of this one would tell",
      tex: String.raw`\tau = ${tex(timeConstant, "s")}`,
      plain: `τ = ${say(timeConstant, "s")}`,
    },
    {
      sentence: `After a trip it rests until less than ${say(100 * cold, "%")} of its trip state is left`,
      tex: String.raw`t = \tau \ln\frac{1}{${cold}} = ${tex(timeConstant)} \cdot ${tex(Math.log(1 / cold))} = ${tex(rest, "s")}`,
      plain: `t = ${say(timeConstant, "s")} × ln(1 ÷ ${cold}) = ${say(rest, "s")} (${sayLong(rest)})`,
    },
    { sentence: "Shortest and longest of each line are those of TRIP.RANGE from the state in which the line starts" },
  ];
};

/** s: nobody rests a breaker for longer between two trials of a day. */
const longestBreak = 7200;

/** A document whose points hardly bound how slow a strip may be asks for hours; what a bench does instead. */
const longRest = (planned: PlannedBreaker): readonly string[] => {
  const rest = restSeconds(timeConstantOf(planned));
  if (rest <= longestBreak) return [];
  return [
    `The printed points of "${planned.characteristic.name}" hardly bound how slowly a strip may cool, so the rest comes to ${sayLong(rest)}. Do not shorten it by guess: a warm strip trips early and passes for a quick one. Rest it overnight; or let it trip a few times at two currents that take minutes, rested overnight each time, and hand over the block of THERMAL.FIT: a small breaker's own time constant commonly asks for less than an hour (common practice, no source).`,
  ];
};

/** What must be said of a fit, which may be another breaker's, and of none. */
export const fitCautions = (planned: PlannedBreaker, fit: Fitted | undefined): readonly string[] => {
  if (!fit) return longRest(planned);
  const { holdEdge, tripEdge } = benchFor(planned);
  const { pickup, timeConstant } = fit;
  return [
    ...(pickup.value < holdEdge || pickup.value > tripEdge
      ? [
          `The fitted pickup of ${say(pickup.value, "A")} lies outside ${say(holdEdge, "A")} to ${say(tripEdge, "A")}, where a sound breaker of this kind has it: is it this breaker's fit?`,
        ]
      : []),
    ...(typeof timeConstant.high === "number"
      ? []
      : ["The trials give the time constant no upper limit, so its likeliest value sets the rests: rest longer."]),
  ];
};
