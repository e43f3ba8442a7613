import type { Argument } from "../../src/definition/cells";
import { found, insulated, ridden, sure, type Words } from "./words";

/** What more of one argument does to the results, by their place. */
export interface Law {
  readonly name: string;
  readonly of: string;
  readonly more: string;
  readonly rises?: readonly number[];
  readonly falls?: readonly number[];
  /** The row that is looked at in an answer of several. */
  readonly row?: "first" | "last";
  /** How words of the answer are compared. */
  readonly words?: Words;
  /** Where the trade promises it only for some questions. */
  readonly only?: (given: (key: string) => Argument) => boolean;
}

type Results = readonly number[];

const law = (
  of: string,
  more: string,
  name: string,
  change: { rises?: Results; falls?: Results } & Pick<Law, "row" | "words" | "only">,
): Law => ({
  name,
  of,
  more,
  ...change,
});

const byBalanceOrFlat: Law["only"] = (given) => !String(given("method")).trim().toLowerCase().startsWith("iec");

/** Whether a value lies within its limits. */
const within: Law["only"] = (given) => {
  const [value, lower, upper] = ["value", "lower", "upper"].map((key) => given(key));
  return !(typeof lower === "number" && Number(value) < lower) && !(typeof upper === "number" && Number(value) > upper);
};

/** Whether the contributions of two readings add up: in a product by a positive correlation, in a quotient by a negative one. */
const addingUp =
  (sign: 1 | -1): Law["only"] =>
  (given) =>
    sign * Number(given("correlation") ?? 0) >= 0;

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
  law("CONTACT.WATTS", "current", "more current never makes less heat", { rises: [0] }),
  law("CONTACT.WATTS", "drop", "a larger drop never makes less heat", { rises: [0] }),
  law("CONTACT.OHMS", "drop", "a larger drop is never less resistance", { rises: [0] }),
  law("CONTACT.OHMS", "current", "the same drop at more current is never more resistance", { falls: [0] }),
  law("CONTACT.LIMIT", "rating", "a larger rating is never allowed less heat", { rises: [0] }),
  law("CONTACT.SHARE", "drop", "a larger drop never uses less of the limit", { rises: [0, 1, 2], words: found }),
  law("CONTACT.SHARE", "current", "the same drop at more current never uses more", { falls: [0, 1, 2], words: found }),
  law("CONTACT.TERMINAL", "temperature", "a hotter terminal never rises less", { rises: [0, 2], words: found }),
  law("CONTACT.TERMINAL", "room", "the same terminal in a warmer room never rises more", {
    falls: [0, 2],
    words: found,
  }),
  law("INRUSH.LOCKED", "power", "a stronger motor never draws less", { rises: [0, 1] }),
  law("INRUSH.LOCKED", "volts", "at more volts the same motor never draws more", { falls: [0, 1] }),
  law("INRUSH.TRANSFORMER", "power", "a larger transformer never draws less", { rises: [0, 1, 2] }),
  law("INRUSH.TRANSFORMER", "volts", "at more volts the same one never draws more", { falls: [0, 1, 2] }),
  law("INRUSH.PEAK", "powerFactor", "the first peak falls with the power factor", { falls: [0, 1] }),
  law("INRUSH.PEAK", "current", "the first peak grows with the current", { rises: [0] }),
  law("INRUSH.MARGIN", "startCurrent", "a larger start never leaves more margin", {
    falls: [1, 2, 3, 4],
    words: ridden,
  }),
  law("INRUSH.MARGIN", "startTime", "a longer start never leaves more margin", { falls: [1, 4], words: ridden }),
  law("INRUSH.MARGIN", "runningCurrent", "more running current never leaves more margin", {
    falls: [0, 4],
    words: ridden,
  }),
  law("INRUSH.MARGIN", "powerFactor", "a better power factor never leaves less margin", {
    rises: [3, 4],
    words: ridden,
  }),
  law("INRUSH.MARGIN", "ambient", "warmer air never leaves more margin", { falls: [0, 1, 4], words: ridden }),
  law("INRUSH.MARGIN", "preload", "a warmer strip never leaves more margin", { falls: [1, 4], words: ridden }),
  law("INRUSH.MARGIN", "setting", "a higher setting never leaves less margin", { rises: [2, 3, 4], words: ridden }),
  law("INRUSH.RATING", "startCurrent", "a larger start never takes a smaller rating", { rises: [0] }),
  law("INRUSH.RATING", "startTime", "a longer start never takes a smaller rating", { rises: [0] }),
  law("INRUSH.RATING", "runningCurrent", "more running current never takes a smaller rating", { rises: [0] }),
  law("INRUSH.CEILING", "fullLoad", "more full load never lowers the ceiling", { rises: [0, 1] }),
  law("INRUSH.STARTS", "startCurrent", "a larger start is never stood more often", { falls: [1], row: "last" }),
  law("INRUSH.STARTS", "startTime", "a longer start is never stood more often", { falls: [1], row: "last" }),
  law("INRUSH.STARTS", "runningCurrent", "a warmer rest is never stood more often", { falls: [1], row: "last" }),
  law("INRUSH.STARTS", "pickup", "a higher pickup never stands fewer", { rises: [1], row: "last" }),
  law("INRUSH.STARTS", "timeConstant", "a slower strip never stands fewer", { rises: [1], row: "last" }),
  law("ENCLOSURE.WATTS", "load", "more load never makes less heat", { rises: [0] }),
  law("ENCLOSURE.WATTS", "lossAtRating", "a larger loss at the rating never makes less heat", { rises: [0] }),
  law("ENCLOSURE.WATTS", "poles", "more poles never make less heat", { rises: [0] }),
  law("ENCLOSURE.WATTS", "rating", "the same loss at a larger rating never makes more heat", { falls: [0] }),
  law("ENCLOSURE.TOTAL", "loads", "more load never makes less heat", { rises: [0, 1] }),
  law("ENCLOSURE.TOTAL", "lossesAtRating", "larger losses at the rating never make less heat", { rises: [0, 1] }),
  law("ENCLOSURE.TOTAL", "ratings", "the same losses at larger ratings never make more heat", { falls: [0, 1] }),
  law("ENCLOSURE.TOTAL", "poles", "more poles never make less heat", { rises: [0, 1] }),
  law("ENCLOSURE.TOTAL", "otherWatts", "other devices never take heat away", { rises: [0] }),
  law("ENCLOSURE.TOTAL", "diversity", "a factor nearer 1 never makes less heat", { rises: [0, 1] }),
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
  law("ENCLOSURE.DISSIPATES", "height", "a taller enclosure never passes less heat", {
    rises: [0],
    only: byBalanceOrFlat,
  }),
  law("ENCLOSURE.DISSIPATES", "depth", "a deeper enclosure never passes less heat", {
    rises: [0],
    only: byBalanceOrFlat,
  }),
  law("ENCLOSURE.DISSIPATES", "emissivity", "a duller paint never passes less heat", { rises: [0] }),
  law("ENCLOSURE.AREA", "height", "a taller enclosure never has less area", { rises: [0] }),
  law("ENCLOSURE.AREA", "width", "a wider enclosure never has less area", { rises: [0] }),
  law("ENCLOSURE.AREA", "depth", "a deeper enclosure never has less area", { rises: [0] }),
  law("ENCLOSURE.DIVERSITY", "circuits", "more circuits never raise the factor", { falls: [0] }),
  law("ENCLOSURE.PANEL", "room", "a warmer room never re-rates up nor leaves it cooler", { falls: [1, 2], rises: [5] }),
  law("ENCLOSURE.PANEL", "width", "a wider enclosure is never hotter", { falls: [5], only: byBalanceOrFlat }),
  law("ENCLOSURE.PANEL", "height", "a taller enclosure is never hotter", { falls: [5], only: byBalanceOrFlat }),
  law("ENCLOSURE.PANEL", "depth", "a deeper enclosure is never hotter", { falls: [5], only: byBalanceOrFlat }),
  law("ENCLOSURE.PANEL", "loads", "more load never leaves it cooler, nor any way more margin", {
    rises: [0, 4, 5],
    falls: [1, 2, 3],
  }),
  law("ENCLOSURE.PANEL", "losses", "lossier breakers never leave it cooler, nor any way more margin", {
    rises: [0, 4, 5],
    falls: [1, 2, 3],
  }),
  law("ENCLOSURE.PANEL", "poles", "more poles never leave it cooler", { rises: [0, 4, 5], falls: [1, 2, 3] }),
  law("ENCLOSURE.PANEL", "otherWatts", "other devices never leave it cooler", { rises: [4, 5], falls: [1, 2, 3] }),
  law("ENCLOSURE.WIRE", "temperature", "warmer copper never makes less heat", { rises: [0] }),
  law("ENCLOSURE.WIRE", "current", "more current never makes less heat", { rises: [0] }),
  law("ENCLOSURE.WIRE", "length", "a longer wire never makes less heat", { rises: [0] }),
  law("ENCLOSURE.WIRE", "size", "a thicker wire never makes more heat", { falls: [0] }),
  law("BENCH.LEAD", "current", "more current never leaves the lead cooler", { rises: [0, 1] }),
  law("BENCH.LEAD", "time", "a longer shot never leaves the lead cooler", { rises: [0, 1] }),
  law("BENCH.LEAD", "startTemperature", "a warmer lead never ends cooler", { rises: [0, 1] }),
  law("BENCH.LEAD", "size", "a thicker lead never ends hotter", { falls: [0, 1] }),
  law("BENCH.SOURCE", "size", "thicker leads never take more, nor reach less", { falls: [0, 1], rises: [2] }),
  law("BENCH.SOURCE", "current", "more current never takes less", { rises: [0, 1] }),
  law("BENCH.SOURCE", "drop", "a larger drop never takes less, nor reaches more", { rises: [0, 1], falls: [2] }),
  law("BENCH.SOURCE", "openCircuitVolts", "a stronger source never reaches less", { rises: [2] }),
  law("BENCH.INSULATION", "megohms", "more insulation is never found worse", {
    rises: [0],
    words: insulated,
  }),
  law("BENCH.SOURCE", "length", "longer leads never take less, nor reach more", { rises: [0, 1], falls: [2] }),
  law("BENCH.SOURCE", "reactance", "more reactance never takes less, nor reaches more", { rises: [0, 1], falls: [2] }),
  law("METER.ERROR", "percent", "a worse meter never errs less", { rises: [0, 1] }),
  law("METER.ERROR", "reading", "a larger reading never errs less", { rises: [0, 1] }),
  law("METER.ERROR", "counts", "more counts never err less", { rises: [0, 1] }),
  law("METER.ERROR", "resolution", "a coarser meter never errs less", { rises: [0, 1] }),
  // Where a correlation may cancel, less certain is another matter: only of readings that err together one way.
  ...["currentUncertainty", "dropUncertainty"].flatMap((more) => [
    law("METER.WATTS", more, `a wider ${more} never gives more certain watts`, { rises: [1], only: addingUp(1) }),
    law("METER.OHMS", more, `a wider ${more} never gives more certain ohms`, { rises: [1], only: addingUp(-1) }),
  ]),
  law("METER.CONFORMS", "u", "a wider error never gives a surer verdict", { falls: [1], words: sure }),
  law("METER.CONFORMS", "u", "a wider error never makes it likelier that a value within its limits is so", {
    falls: [0],
    only: within,
  }),
  law("METER.TURNS", "reading", "a larger reading is never less current", { rises: [0] }),
  law("METER.TURNS", "turns", "more turns never mean more current", { falls: [0] }),
];
