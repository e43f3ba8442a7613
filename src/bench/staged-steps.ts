import { say, sayNumber } from "../metrology/say";
import type { TripPoint } from "../trip/characteristic";
import { raisedWithin } from "./iec60898";
import { bandAt, eachPole, type PlanStep, type Subject } from "./plan-step";
import { allInSeries, handsOff, lateThen, setOnLink, staysWithIt } from "./plan-words";
import { fromCold, sayLong } from "./rest";

/** The thermal tests of the IEC documents: a long hold, a trip straight after it, then what is to trip from cold. */
export const stagedSteps = (subject: Subject): readonly PlanStep[] =>
  subject.bench.ratedClass.trips.flatMap((point) =>
    point.after === undefined ? coldTrip(subject, point) : [hold(subject), straightAfter(subject, point)],
  );

/** IEC 60898-1 names its tests by letters. */
const letter = ({ bench }: Subject, name: string): string => (bench.ratedClass.floor ? ` (test ${name})` : "");

const hold = (subject: Subject): PlanStep => {
  const { bench, poles, rest } = subject;
  const { holdMultiple, holdSeconds = rest } = bench.ratedClass;
  return {
    step: `hold at ${holdMultiple} ×, as found${letter(subject, "a")}`,
    current: bench.holdEdge,
    band: bandAt(bench, bench.holdEdge),
    stopAt: holdSeconds,
    rest,
    caution: [
      fromCold(rest),
      ...allInSeries(poles),
      `${sayLong(holdSeconds)} of current: ${staysWithIt.toLowerCase()}`,
      handsOff,
      "A trip here is early and ends the pair. At the end do not switch off: go on with the next line.",
    ].join(" "),
  };
};

const straightAfter = (subject: Subject, { multiple, seconds }: TripPoint): PlanStep => {
  const { bench, warm, poles } = subject;
  const current = multiple * bench.rating;
  return {
    step: `trip at ${multiple} × straight after${letter(subject, "b")}`,
    current,
    band: bandAt(warm, current),
    stopAt: seconds,
    rest: 0,
    caution: [
      `At once, no rest: raise the current evenly within ${raisedWithin} s.`,
      ...allInSeries(poles),
      staysWithIt,
      handsOff,
      lateThen,
      ...(poles > 1 ? ["In series a slow pole hides behind the others: only a pole alone shows it."] : []),
    ].join(" "),
  };
};

const coldTrip = (subject: Subject, { multiple, seconds }: TripPoint): readonly PlanStep[] => {
  const { bench, poles, rest } = subject;
  const current = multiple * bench.rating;
  const band = bandAt(bench, current);
  return eachPole(poles, (pole) => ({
    step: `trip at ${sayNumber(multiple)} ×${letter(subject, "c")}${pole}`,
    current,
    band,
    stopAt: seconds,
    rest,
    caution: [
      fromCold(rest),
      setOnLink,
      handsOff,
      ...(band.shortest > 0 ? [`Tripped before ${say(band.shortest, "s")}: early.`] : []),
      lateThen,
    ].join(" "),
  }));
};
