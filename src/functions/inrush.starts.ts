import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { type Given, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { mostStartsPerHour, type RepeatedStarts, repeatedStarts } from "../inrush/starts";
import { say, sayNumber } from "../metrology/say";
import { modelCautions, thermalEquation } from "../thermal/model";
import { rideThroughCaution } from "./accounts/cautions";
import { currentOrOff, pickup, testCurrent, timeConstant } from "./arguments/body";
import { statePicture } from "./pictures/state";

const parameters = {
  startCurrent: testCurrent("the current while the motor starts, r.m.s."),
  startTime: quantity("s", "how long each start lasts"),
  runningCurrent: currentOrOff("the current between the starts, r.m.s.; 0 where the motor is switched off"),
  pickup,
  timeConstant,
  period: quantity("s", "from the beginning of one start to the beginning of the next"),
} as const;

/** More starts than this are not listed one by one. */
const listed = 100;

const run = (given: Given<typeof parameters>): RepeatedStarts => {
  const { startTime, runningCurrent, pickup, period } = given;
  if (runningCurrent >= pickup)
    throw new BadInput(
      `running current: less than the pickup of ${say(pickup, "A", 6)} is wanted, not ${say(runningCurrent, "A", 6)}: that current trips the breaker without any start.`,
    );
  if (period < startTime)
    throw new BadInput(
      `period: at least the start time of ${say(startTime, "s", 6)} is wanted, not ${say(period, "s", 6)}: one start would begin within the other.`,
    );
  return repeatedStarts(given, given);
};

/** The start in which it trips, or after which the state has settled; every start up to it is listed, of many the first hundred. */
const lastStart = ({ trip, settledStart }: RepeatedStarts): number => trip?.start ?? settledStart;

export default define({
  name: "INRUSH.STARTS",
  summary: "What one motor start after another does to a breaker's strip, and how many starts an hour it stands.",
  parameters,
  results: [
    { name: "start", unit: "", meaning: "number of the start; in the last row the words “starts per hour”" },
    {
      name: "state",
      unit: "",
      meaning:
        "thermal state at the end of the start, 1 = trips, or “tripped”; in the last row the most starts per hour for ever",
    },
  ],
  answers: "rows",
  sources: [thermalEquation],
  cautions: [
    rideThroughCaution,
    "The thermal trip only: whether the magnetic release lets the motor start at all is asked with INRUSH.MARGIN and INRUSH.PEAK.",
    "The motor has a limit of its own, often fewer starts per hour than the breaker stands: ask its maker.",
    ...modelCautions.slice(1),
  ],
  examples: [
    {
      cells: [30, 20, 0, 18, 150, 60],
      gives: [
        [1, 0.346740780435],
        [2, 0.579168076338],
        [3, 0.734968752031],
        [4, 0.839405068133],
        [5, 0.909410824349],
        [6, 0.95633708608],
        [7, 0.987792700003],
        [8, "tripped"],
        ["starts per hour", 56.366970980939],
      ],
      within: 1e-10,
      worked:
        "another program in small steps (Runge–Kutta), and by hand: (30/18)² × (1 − e^(−20/150)) = 0.34674; rest 150 s × ln(e^(−20/150) ÷ 0.65326) = 43.87 s, 3600 ÷ 63.87 = 56.37",
    },
    {
      cells: [25, 20, 0, 18, 150, 80],
      gives: [
        [1, 0.240792208635],
        [2, 0.382052047518],
      ],
      within: 1e-10,
      worked: "by hand: (25/18)² × (1 − e^(−20/150)) = 0.240792; × (1 + e^(−80/150)) = 0.382052; it settles at 0.5825",
    },
  ],
  calculate: (given) => {
    const starts = run(given);
    const last = lastStart(starts);
    const numbers = Array.from({ length: Math.min(last, listed) }, (_, i) => i + 1);
    if (last > listed) numbers.push(last);
    const most = mostStartsPerHour(given, given);
    return [
      ...numbers.map((start) => [start, start === starts.trip?.start ? "tripped" : starts.stateAfter(start)]),
      ["starts per hour", most === Infinity ? "no limit" : most],
    ];
  },
  explain: (given) => {
    const { startCurrent, startTime, runningCurrent, pickup, timeConstant, period } = given;
    const starts = run(given);
    const most = mostStartsPerHour(given, given);
    const last = lastStart(starts);
    return {
      steps: [
        {
          sentence: "During a start the state runs towards the square of start current ÷ pickup",
          tex: String.raw`s \to \left(\frac{${tex(startCurrent)}}{${tex(pickup)}}\right)^2 = ${tex((startCurrent / pickup) ** 2)},\quad e^{-t/\tau} = e^{-${tex(startTime)}/${tex(timeConstant)}} = ${tex(Math.exp(-startTime / timeConstant))}`,
          plain: `towards (${sayNumber(startCurrent)} ÷ ${sayNumber(pickup)})² = ${sayNumber((startCurrent / pickup) ** 2)}; what is left of the distance after ${say(startTime, "s")}: ${sayNumber(Math.exp(-startTime / timeConstant))}`,
        },
        {
          sentence: "Until the next start it runs towards that of the running current",
          tex: String.raw`s \to \left(\frac{${tex(runningCurrent)}}{${tex(pickup)}}\right)^2 = ${tex((runningCurrent / pickup) ** 2)},\quad e^{-${tex(period - startTime)}/${tex(timeConstant)}} = ${tex(Math.exp(-(period - startTime) / timeConstant))}`,
          plain: `towards (${sayNumber(runningCurrent)} ÷ ${sayNumber(pickup)})² = ${sayNumber((runningCurrent / pickup) ** 2)}; left after ${say(period - startTime, "s")}: ${sayNumber(Math.exp(-(period - startTime) / timeConstant))}`,
        },
        starts.trip
          ? {
              sentence: "From cold, start by start, the state climbs until it reaches 1",
              plain: `trips ${say(starts.trip.seconds, "s")} into start ${starts.trip.start}`,
            }
          : {
              sentence: "From cold, start by start, the state climbs to where a period brings it back to itself",
              plain: `after the first start ${sayNumber(starts.stateAfter(1))}, settles at ${sayNumber(starts.settles)}`,
            },
        {
          sentence: "The period that settles exactly at 1, as starts per hour",
          plain:
            most === Infinity
              ? "no limit: the strip carries the start current for ever"
              : most === 0
                ? "0: one start after long running trips it"
                : `3600 s ÷ ${say(3600 / most, "s")} = ${sayNumber(most)} starts per hour`,
        },
      ],
      answer: starts.trip
        ? `It trips in start ${starts.trip.start}, ${say((starts.trip.start - 1) * period + starts.trip.seconds, "s")} after the first began.`
        : `It holds: the state settles at ${sayNumber(100 * starts.settles, 3)} % of the heat that trips it.`,
      cautions: [
        ...(last > listed ? [`Only the first ${listed} starts and the last of ${last} are listed.`] : []),
        ...(!starts.trip && starts.settles > 0.8
          ? ["It holds by little: a few per cent more current, warmer air or a longer start may trip it."]
          : []),
      ],
    };
  },
  plot: (given) => {
    const starts = run(given);
    const { startCurrent, runningCurrent, startTime, pickup, period } = given;
    const shown = Math.min(lastStart(starts), 12);
    const tripSeconds = starts.trip ? (starts.trip.start - 1) * period + starts.trip.seconds : Infinity;
    const begins = Array.from({ length: shown + 1 }, (_, i) => i * period);
    return statePicture({
      title: "The strip through the starts",
      sentence: starts.trip
        ? `The thermal state climbs with each start and reaches the trip, 1, in start ${starts.trip.start}.`
        : `The thermal state climbs with each start and settles at ${sayNumber(starts.settles)}, below the trip.`,
      seconds: shown * period,
      moments: begins.flatMap((begin) => [begin, begin + startTime, begin + startTime * (1 + 1e-9)]),
      tripSeconds,
      stateAt: starts.stateAt,
      settlesAt: (seconds) => ((seconds % period <= startTime ? startCurrent : runningCurrent) / pickup) ** 2,
    });
  },
});
