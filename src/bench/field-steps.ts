import { NoAnswer } from "../metrology/no-answer";
import { say } from "../metrology/say";
import type { TripPoint } from "../trip/characteristic";
import { fieldLimit, fieldMultiple } from "../trip/neta";
import { bandAt, eachPole, type PlanStep, type Subject } from "./plan-step";
import { allInSeries, handsOff, lateThen, noTestOfTheStrip, setOnLink, staysWithIt } from "./plan-words";
import { fromCold, sayLong } from "./rest";

/** The thermal tests of UL 489 and of the field: from the highest current down, each from cold. */
export const fieldSteps = (subject: Subject): readonly PlanStep[] => {
  const points = [...subject.bench.ratedClass.trips].sort((a, b) => b.multiple - a.multiple);
  const lowest = points.at(-1) as TripPoint;
  return [asFound(subject), ...points.slice(0, -1).map((point) => inItsPlace(subject, point, lowest))]
    .flat()
    .concat(ultimate(subject, lowest));
};

const percent = (multiple: number): string => `${Math.round(100 * multiple)} %`;

const asFound = ({ bench, poles, rest }: Subject): readonly PlanStep[] => {
  const current = fieldMultiple * bench.rating;
  const band = bandAt(bench, current);
  const limits = [250, 600].flatMap((volts) => limitAt(bench.rating, volts));
  const printed = limits.map(({ volts, seconds }) => `${say(seconds, "s")} up to ${volts} V`).join(", ");
  return eachPole(poles, (pole) => ({
    step: `trip at ${percent(fieldMultiple)}, as found${pole}`,
    current,
    band,
    stopAt: Math.max(band.longest, ...limits.map(({ seconds }) => seconds)),
    rest,
    caution: [
      fromCold(rest),
      setOnLink,
      handsOff,
      ...(limits.length > 0
        ? [
            `The field limit is ${printed}, by the voltage marked on the breaker (ANSI/NETA table 100.7, from memory); later is late.`,
          ]
        : []),
      ...noTestOfTheStrip(bench, current),
      "Switch the source off at the end.",
    ].join(" "),
  }));
};

/** Nothing where the table has no row. */
const limitAt = (rating: number, volts: number): readonly { volts: number; seconds: number }[] => {
  try {
    return [{ volts, seconds: fieldLimit(rating, volts) }];
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return [];
    throw thrown;
  }
};

const inItsPlace = (
  { bench, poles, rest }: Subject,
  { multiple, seconds }: TripPoint,
  lowest: TripPoint,
): readonly PlanStep[] => {
  const current = multiple * bench.rating;
  const band = bandAt(bench, current);
  return eachPole(poles, (pole) => ({
    step: `or, in place of ${percent(fieldMultiple)}: trip at ${percent(multiple)}, as found${pole}`,
    current,
    band,
    stopAt: seconds,
    rest,
    caution: [
      fromCold(rest),
      setOnLink,
      handsOff,
      lateThen,
      ...noTestOfTheStrip(bench, current),
      `A pass at ${percent(multiple)} does not prove ${percent(lowest.multiple)}.`,
    ].join(" "),
  }));
};

const ultimate = ({ bench, poles, rest }: Subject, { multiple, seconds }: TripPoint): PlanStep => {
  const current = multiple * bench.rating;
  return {
    step: `trip at ${percent(multiple)}`,
    current,
    band: bandAt(bench, current),
    stopAt: seconds,
    rest,
    caution: [
      fromCold(rest),
      ...allInSeries(poles),
      `Up to ${sayLong(seconds)} of current: ${staysWithIt.toLowerCase()}`,
      handsOff,
      lateThen,
      "No pass at a higher current stands for this line.",
    ].join(" "),
  };
};
