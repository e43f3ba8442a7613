import type { Called } from "../../src/definition/call";
import type { Answer, Argument } from "../../src/definition/cells";
import { linear, logarithmic, typed } from "./dice";
import { parametersOf, type Question } from "./question";

/** What more of one argument does to the results, by their place. */
export interface Law {
  readonly name: string;
  readonly of: string;
  readonly more: string;
  readonly rises?: readonly number[];
  readonly falls?: readonly number[];
  /** The row that is looked at in an answer of several. */
  readonly row?: "first" | "last";
  /** Where the trade promises it only for some questions. */
  readonly only?: (given: (key: string) => Argument) => boolean;
}

type Results = readonly number[];

const law = (
  of: string,
  more: string,
  name: string,
  change: { rises?: Results; falls?: Results } & Pick<Law, "row" | "only">,
): Law => ({
  name,
  of,
  more,
  ...change,
});

const byBalanceOrFlat: Law["only"] = (given) => !String(given("method")).trim().toLowerCase().startsWith("iec");

/** What physics or the rule asked about promises, whatever the numbers. */
export const laws: readonly Law[] = [
  law("TRIP.RANGE", "current", "more current never takes longer", { falls: [0, 1] }),
  law("TRIP.RANGE", "preload", "a warmer start never takes longer", { falls: [0, 1] }),
  law("TRIP.RANGE", "ambient", "warmer air never takes longer", { falls: [0, 1] }),
  law("TRIP.CURRENT", "time", "a longer time never takes more current", { falls: [0, 1] }),
  law("TRIP.CURRENT", "ambient", "warmer air never takes more current", { falls: [0, 1] }),
  law("TRIP.CURRENT", "preload", "a warmer start never takes more current", { falls: [0, 1] }),
  law("TRIP.RAMP", "rate", "a faster hand never trips it at less", { rises: [0, 1] }),
  // Warm from a preload it is another matter: what begins higher leaves less time to cool.
  law("TRIP.RAMP", "from", "from cold, a ramp that begins higher never trips it at less", {
    rises: [0, 1],
    only: (given) => !Number(given("preload") ?? 0),
  }),
  law("TRIP.RAMP", "ambient", "warmer air never lets it carry more", { falls: [0, 1] }),
  law("TRIP.RERATED", "ambient", "hotter air never re-rates up", { falls: [0] }),
  law("TRIP.RERATED", "rating", "a larger rating stays the larger", { rises: [0] }),
  law("TRIP.STANDARD", "load", "more load never takes a smaller rating", { rises: [0] }),
  law("TRIP.STANDARD", "continuous", "a longer load never takes a smaller rating", { rises: [0] }),
  law("TRIP.MAGNETIC", "setting", "a higher setting never trips at less", { rises: [0, 1] }),
  law("THERMAL.TIME", "current", "more current never takes longer", { falls: [0] }),
  law("THERMAL.TIME", "preload", "a warmer start never takes longer", { falls: [0] }),
  law("THERMAL.TIME", "pickup", "a higher pickup never trips sooner", { rises: [0] }),
  law("THERMAL.TIME", "timeConstant", "a slower strip never trips sooner", { rises: [0] }),
  law("THERMAL.STATE", "current", "more current never leaves it cooler", { rises: [0] }),
  law("THERMAL.STATE", "start", "a warmer start never ends cooler", { rises: [0] }),
  law("THERMAL.RAMP", "rate", "a faster hand trips it sooner and higher", { falls: [0], rises: [1] }),
  law("THERMAL.RAMP", "pickup", "a higher pickup trips later and higher", { rises: [0, 1] }),
  law("THERMAL.RAMP", "from", "a ramp that begins higher trips sooner and higher", { falls: [0], rises: [1] }),
  law("THERMAL.REST", "state", "from a warmer state it cools longer", { rises: [0] }),
  law("THERMAL.REST", "target", "to a warmer target it cools less long", { falls: [0] }),
  law("THERMAL.FORECAST", "current", "more current never takes longer", { falls: [0, 1, 2] }),
  law("THERMAL.FORECAST", "preload", "a warmer start never takes longer", { falls: [0, 1, 2] }),
  law("THERMAL.FORECAST", "confidence", "surer limits never lie closer together", { falls: [0], rises: [2] }),
  law("THERMAL.HOLDS", "current", "more current never holds more surely", { falls: [0] }),
  law("THERMAL.HOLDS", "time", "a longer time never holds more surely", { falls: [0] }),
  law("THERMAL.HOLDS", "preload", "a warmer start never holds more surely", { falls: [0] }),
  law("CONTACT.SHARE", "drop", "a larger drop never uses less of the limit", { rises: [0, 1] }),
  law("INRUSH.PEAK", "powerFactor", "the first peak falls with the power factor", { falls: [0, 1] }),
  law("INRUSH.PEAK", "current", "the first peak grows with the current", { rises: [0] }),
  law("INRUSH.MARGIN", "startCurrent", "a larger start never leaves more margin", { falls: [1, 2, 3] }),
  law("INRUSH.MARGIN", "startTime", "a longer start never leaves more margin", { falls: [1] }),
  law("INRUSH.MARGIN", "runningCurrent", "more running current never leaves more margin", { falls: [0] }),
  law("INRUSH.MARGIN", "powerFactor", "a better power factor never leaves less margin", { rises: [3] }),
  law("INRUSH.MARGIN", "ambient", "warmer air never leaves more margin", { falls: [0, 1] }),
  law("INRUSH.RATING", "startCurrent", "a larger start never takes a smaller rating", { rises: [0] }),
  law("INRUSH.RATING", "startTime", "a longer start never takes a smaller rating", { rises: [0] }),
  law("INRUSH.RATING", "runningCurrent", "more running current never takes a smaller rating", { rises: [0] }),
  law("INRUSH.CEILING", "fullLoad", "more full load never lowers the ceiling", { rises: [0, 1] }),
  law("INRUSH.STARTS", "startCurrent", "a larger start is never stood more often", { falls: [1], row: "last" }),
  law("INRUSH.STARTS", "startTime", "a longer start is never stood more often", { falls: [1], row: "last" }),
  law("INRUSH.STARTS", "runningCurrent", "a warmer rest is never stood more often", { falls: [1], row: "last" }),
  law("ENCLOSURE.WATTS", "load", "more load never makes less heat", { rises: [0] }),
  law("ENCLOSURE.RISE", "watts", "more watts never leave it cooler", { rises: [0, 1] }),
  law("ENCLOSURE.RISE", "height", "a taller enclosure is never hotter", { falls: [0, 1], only: byBalanceOrFlat }),
  law("ENCLOSURE.RISE", "width", "a wider enclosure is never hotter", { falls: [0, 1], only: byBalanceOrFlat }),
  law("ENCLOSURE.RISE", "depth", "a deeper enclosure is never hotter", { falls: [0, 1], only: byBalanceOrFlat }),
  law("ENCLOSURE.RISE", "emissivity", "a duller paint is never hotter", { falls: [0, 1] }),
  law("ENCLOSURE.DISSIPATES", "rise", "a larger rise never passes less heat", { rises: [0] }),
  law("ENCLOSURE.DISSIPATES", "width", "a wider enclosure never passes less heat", {
    rises: [0],
    only: byBalanceOrFlat,
  }),
  law("ENCLOSURE.AREA", "depth", "a deeper enclosure never has less area", { rises: [0] }),
  law("ENCLOSURE.DIVERSITY", "circuits", "more circuits never raise the factor", { falls: [0] }),
  law("ENCLOSURE.PANEL", "room", "a warmer room never re-rates up nor leaves it cooler", { falls: [1, 2], rises: [5] }),
  law("ENCLOSURE.PANEL", "width", "a wider enclosure is never hotter", { falls: [5], only: byBalanceOrFlat }),
  law("ENCLOSURE.WIRE", "temperature", "warmer copper never makes less heat", { rises: [0] }),
  law("BENCH.LEAD", "current", "more current never leaves the lead cooler", { rises: [0, 1] }),
  law("BENCH.LEAD", "time", "a longer shot never leaves the lead cooler", { rises: [0, 1] }),
  law("BENCH.LEAD", "startTemperature", "a warmer lead never ends cooler", { rises: [0, 1] }),
  law("BENCH.SOURCE", "length", "longer leads never take less, nor reach more", { rises: [0, 1], falls: [2] }),
  law("BENCH.SOURCE", "reactance", "more reactance never takes less, nor reaches more", { rises: [0, 1], falls: [2] }),
  law("METER.ERROR", "percent", "a worse meter never errs less", { rises: [0, 1] }),
  law("METER.WATTS", "currentUncertainty", "a less certain current never gives more certain watts", {
    rises: [1],
    only: (given) => !(Number(given("correlation") ?? 0) < 0),
  }),
  law("METER.TURNS", "turns", "more turns never mean more current", { falls: [0] }),
];

/** The question with more of one argument; undefined where that is left out or no number. */
export const withMore = (question: Question, key: string, die: number): Question | undefined => {
  const place = parametersOf(question.definition).findIndex(([name]) => name === key);
  const given = question.args[place];
  if (typeof given !== "number") return undefined;
  const isWhole = ["turns", "circuits"].includes(key);
  const isDegrees = ["ambient", "room", "temperature", "startTemperature"].includes(key);
  const more = isDegrees || given <= 0 ? given + linear(0.01, 20)(die) : typed(given * logarithmic(1.001, 4)(die));
  return question.with(question.args.map((one, at) => (at === place ? (isWhole ? Math.ceil(more) : more) : one)));
};

const forEver = ["holds", "no limit", "tripped"];

/** A result as it is compared: what is for ever is larger than any number. undefined: it is not known. */
export const comparable = (called: Called, law: Pick<Law, "row">, result: number): number | undefined => {
  const cell = (law.row === "last" ? called.at(-1) : called[0])?.[result] as Answer;
  if (typeof cell === "number") return cell;
  return forEver.includes(String(cell)) ? Infinity : undefined;
};
