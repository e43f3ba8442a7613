import type { Argument } from "../../src/definition/cells";
import type { Parameter } from "../../src/definition/parameter";
import { either, linear, logarithmic, oneOf, type Throw, typed, whole } from "./dice";
import { fitBlocks } from "./fit-blocks";
import { limitsOf } from "./limits";
import { hasOwnBand, type Scene, takesSetting } from "./scene";
import { oddly } from "./strange";

/** An argument that fits the scene; undefined where the scene has none. */
type Usual = (die: number, scene: Scene) => Argument;

const times =
  (multiple: Throw<number>): Usual =>
  (die, { rating }) =>
    typed(rating * multiple(die));

const printedMultiples = oneOf(1, 1.05, 1.13, 1.3, 1.35, 1.45, 2, 2.55, 3, 5, 10, 20);
const sizes = oneOf("14 AWG", "12 awg", "#8 AWG", "1/0 AWG", "4/0 AWG", "250 kcmil", "500 MCM", "1.5 mm²", "2.5 mm2");
const metres = logarithmic(0.2, 2.2);
const amperesAtRest = times(linear(0, 0.95));

/** By the name of a parameter, or "FUNCTION.parameter" where one function means another size by it. */
const usuals: Readonly<Record<string, Usual>> = {
  rating: (_, { rating }) => rating,
  ratings: (_, { rating }) => rating,
  characteristic: (_, { characteristic }) => characteristic,
  pickup: (_, { pickup }) => pickup,
  timeConstant: (_, { timeConstant }) => timeConstant,
  current: times(either(logarithmic(0.8, 25), printedMultiples, logarithmic(1.02, 4))),
  preload: (die, scene) => (hasOwnBand(scene) ? undefined : typed(scene.rating * 0.75 * die)),
  ambient: (die, scene) => (hasOwnBand(scene) ? undefined : linear(-25, 60)(die)),
  tripRise: (die, scene) => (hasOwnBand(scene) ? undefined : linear(45, 110)(die)),
  setting: (die, scene) => (takesSetting(scene) ? times(logarithmic(3, 20))(die, scene) : undefined),
  time: logarithmic(0.02, 8000),
  outcome: oneOf("tripped", "held"),
  currentError: times(linear(0, 0.05)),
  timeError: linear(0, 2),
  rate: times(logarithmic(1e-4, 5)),
  from: amperesAtRest,
  reference: linear(15, 45),
  load: times(linear(0.1, 1)),
  loads: times(linear(0, 1)),
  start: linear(0, 0.95),
  fit: oneOf(...fitBlocks),
  confidence: linear(0.5, 0.99),
  drop: logarithmic(0.01, 0.5),
  ohms: logarithmic(1e-4, 0.05),
  room: linear(5, 45),
  powerFactor: linear(0, 1),
  startCurrent: times(logarithmic(1.5, 8)),
  startTime: logarithmic(0.05, 10),
  runningCurrent: times(linear(0.2, 0.95)),
  fullLoad: times(linear(0.1, 4)),
  lossAtRating: logarithmic(0.5, 20),
  lossesAtRating: logarithmic(0.5, 20),
  losses: logarithmic(0.5, 10),
  poles: whole(1, 4),
  otherWatts: linear(0, 40),
  height: metres,
  width: metres,
  depth: logarithmic(0.1, 0.9),
  watts: logarithmic(1, 300),
  emissivity: linear(0.05, 1),
  rise: logarithmic(1, 60),
  circuits: either(whole(2, 12), whole(1, 200)),
  length: logarithmic(0.2, 20),
  size: sizes,
  temperature: linear(20, 90),
  megohms: logarithmic(0.1, 5000),
  breakers: oneOf("P1-01", "P1-02", "p1-01 ", "P2-07", "P2-08"),
  verdicts: oneOf<Argument>("in range", "late", "EARLY", "undecided until 3600 s", "too close to call", null),
  reading: logarithmic(0.01, 500),
  readings: linear(0.9, 1.1),
  percent: linear(0.05, 3),
  counts: whole(0, 10),
  resolution: oneOf(0.001, 0.01, 0.1, 1),
  currentUncertainty: logarithmic(0.001, 1),
  dropUncertainty: logarithmic(1e-5, 0.05),
  degrees: oneOf<Argument>("many", 4, 9, [[4, "many"]]),
  timesBefore: logarithmic(20, 60),
  timesAfter: logarithmic(15, 50),
  turns: whole(1, 20),
  value: linear(-2, 12),
  u: logarithmic(0.01, 3),
  lower: either<Argument>(linear(-1, 3), oneOf<Argument>("none", null)),
  upper: either<Argument>(linear(4, 10), linear(4, 10), linear(4, 10), oneOf<Argument>(" None ")),
  "TRIP.FIELDLIMIT.rating": logarithmic(5, 5000),
  "TRIP.FIELDLIMIT.ratedVoltage": oneOf(120, 230, 240, 277, 480, 600),
  "TRIP.CURVE.points": either(whole(2, 12), whole(2, 100)),
  "CONTACT.SHARE.current": times(logarithmic(0.2, 1.1)),
  "INRUSH.TRANSFORMER.power": logarithmic(0.5, 500),
  "INRUSH.TRANSFORMER.volts": oneOf(120, 230, 400, 480),
  "INRUSH.LOCKED.power": logarithmic(0.25, 100),
  "INRUSH.LOCKED.volts": oneOf(115, 230, 460, 575),
  "BENCH.LEAD.time": logarithmic(0.1, 20),
  "BENCH.LEAD.current": times(logarithmic(1, 10)),
  "BENCH.SOURCE.openCircuitVolts": logarithmic(2, 20),
  "BENCH.SOURCE.reactance": linear(0, 0.05),
  "BENCH.LEAD.startTemperature": linear(0, 70),
  "ENCLOSURE.PANEL.characteristic": oneOf("B", "C", "D", "UL 489", "iec 60947-2"),
  "INRUSH.RATING.characteristic": oneOf("B", "C", "D", " c "),
};

/** The usual throw of a parameter: by its name where that says more, else anything its schema takes. */
export const usualOf = (functionName: string, key: string, parameter: Parameter): Usual =>
  usuals[`${functionName}.${key}`] ?? usuals[key] ?? anyTaken(parameter);

/** Anything that the schema takes, over all sizes: derived from the definition alone. */
export const anyTaken = (parameter: Parameter): Usual => {
  const { lowest, highest, whole: onlyWhole, words, takesNumbers } = limitsOf(parameter);
  const choices = parameter.choices ?? words;
  if (choices.length > 0) {
    const word = oneOf<Argument>(...choices);
    const odd = oneOf<Argument>(...choices.map((choice) => (typeof choice === "string" ? oddly(choice) : choice)));
    return either(word, word, word, odd);
  }
  if (!takesNumbers) return oneOf("a", "B-2");
  if (onlyWhole) return whole(lowest, Math.min(highest, lowest + 1000));
  const sizes = logarithmic(Math.max(1e-12, lowest), Math.max(1e-12, highest));
  if (lowest >= 0) return either(sizes, logarithmic(Math.max(1e-4, lowest), Math.max(1e-4, Math.min(1e4, highest))));
  return linear(Math.max(lowest, -1e6), Math.min(highest, 1e6));
};
