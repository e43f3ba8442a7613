import { say, sayNumber } from "../metrology/say";
import type { Characteristic, HoldPoint, MagneticBand } from "../trip/characteristic";
import { fieldBand, pulse, runUpSeconds } from "./field-values";
import { bandAt, eachPole, type PlanStep, type Subject } from "./plan-step";
import { handsOff, setOnLink } from "./plan-words";
import { fromCold } from "./rest";

const oneShot = "Not tripped by then: late. Do not shoot again and again: find out why.";
const noRunUp = "Never by running the current up: that can destroy the breaker.";

/** The magnetic release comes last: its currents are the hardest on the breaker. Pole by pole. */
export const magneticSteps = (
  subject: Subject,
  characteristic: Characteristic,
  setting: number | undefined,
): readonly PlanStep[] => {
  const { bench, poles } = subject;
  const { magnetic, ratedClass } = bench;
  if (magnetic && ratedClass.floor) {
    const { floor } = ratedClass;
    return eachPole(poles, (pole) => [held(subject, floor, pole), tripped(subject, magnetic, pole)]).flat();
  }
  // Without the marked setting the band of a setting of 1 A is its two factors.
  const factors = characteristic.magnetic(bench.rating, 1) as MagneticBand;
  return eachPole(poles, (pole) =>
    factors.seconds === undefined
      ? [runUp(subject, { factors, setting, pole })]
      : atSetting(subject, { factors, setting, pole }),
  ).flat();
};

const held = ({ bench, rest }: Subject, { multiple, seconds }: HoldPoint, pole: string): PlanStep => {
  const current = multiple * bench.rating;
  return {
    step: `no trip at ${multiple} × for ${say(seconds, "s")} (test d)${pole}`,
    current,
    band: bandAt(bench, current),
    stopAt: seconds,
    rest,
    caution: `${fromCold(rest)} ${setOnLink} Switch the whole current on at once and let the source cut it off at the end; a trip before is early. ${handsOff} ${noRunUp}`,
  };
};

const tripped = ({ bench, rest }: Subject, { upper, seconds }: MagneticBand, pole: string): PlanStep => ({
  step: `magnetic trip at ${sayNumber(upper / bench.rating)} × (test e)${pole}`,
  current: upper,
  band: bandAt(bench, upper),
  stopAt: seconds,
  rest,
  caution: `${fromCold(rest)} ${setOnLink} Switch the whole current on at once; let the source cut it off soon after the end. ${oneShot} ${handsOff} ${noRunUp}`,
});

/** A magnetic release whose band hangs on its setting: the band of a setting of 1 A, and the setting, A, if it was told. */
interface Marked {
  readonly factors: MagneticBand;
  readonly setting: number | undefined;
  readonly pole: string;
}

/** Where the current follows from the setting. */
const shot = ({ bench }: Subject, factor: number, { setting }: Marked): Pick<PlanStep, "current" | "band"> =>
  setting === undefined
    ? { current: "not known", band: "not known" }
    : { current: factor * setting, band: bandAt(bench, factor * setting) };

const bySetting = ({ setting }: Marked): string =>
  setting === undefined
    ? "The rating does not tell the current: read the marked setting."
    : `For the marked setting of ${say(setting, "A")}: compare it with the breaker.`;

const atSetting = (subject: Subject, marked: Marked): readonly PlanStep[] => {
  const { lower, upper, seconds } = marked.factors;
  return [
    {
      step: `no magnetic trip at ${lower} × the marked setting for ${say(seconds ?? 0, "s")}`,
      factor: lower,
      after: "Let the source cut it off at the end; a trip before is early.",
    },
    {
      step: `magnetic trip at ${upper} × the marked setting`,
      factor: upper,
      after: `Let the source cut it off soon after the end. ${oneShot}`,
    },
  ].map(({ step, factor, after }) => ({
    step: `${step}${marked.pole}`,
    ...shot(subject, factor, marked),
    stopAt: seconds,
    rest: subject.rest,
    caution: `${fromCold(subject.rest)} ${bySetting(marked)} ${setOnLink} Switch the whole current on at once. ${after} ${handsOff} ${noRunUp}`,
  }));
};

const runUp = (subject: Subject, marked: Marked): PlanStep => {
  const { lower, upper } = marked.factors;
  return {
    step: `magnetic trip, last${marked.pole}`,
    ...shot(subject, upper, marked),
    stopAt: runUpSeconds.most,
    rest: subject.rest,
    caution: `${fromCold(subject.rest)} ${bySetting(marked)} It trips at ${lower} to ${upper} × of it (from memory), in the field ${fieldBand.lower} to ${fieldBand.upper} × (ANSI/NETA table 100.8); one that is not adjustable, within its maker's band. Pulses of ${pulse.least} to ${pulse.most} cycles, from ${100 * pulse.firstShare} % of the expected current up, cooling between them. A run-up can destroy the breaker: ${runUpSeconds.least} to ${runUpSeconds.most} s at most, one pole. ${handsOff}`,
  };
};
