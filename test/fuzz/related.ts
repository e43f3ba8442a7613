import { type Argument, isRange, type Range } from "../../src/definition/cells";
import { either, linear, logarithmic, oneOf, typed } from "./dice";
import { fitBlocks, pickupOf } from "./fit-blocks";
import type { Scene } from "./scene";

type Cells = Readonly<Record<string, Argument>>;

/** One row of a question while it is made; `first` is the question's first row. */
export interface Row {
  readonly cells: Cells;
  readonly dice: Readonly<Record<string, number>>;
  readonly index: number;
  readonly first: { readonly cells: Cells; readonly dice: Readonly<Record<string, number>>; readonly scene: Scene };
}

/** Cells that must agree with others of their question, or it would be refused nearly always. */
type Relation = (row: Row) => Cells;

const number = (argument: Argument): number => (typeof argument === "number" ? argument : 1);
const thrown = (row: Row, key: string): number => row.dice[key] ?? 0;

const onePhase = { power: oneOf(0.25, 0.33, 0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10), volts: oneOf(115, 120, 208, 240) };
const threePhase = { power: oneOf(0.5, 0.75, 1, 2, 5, 10, 25, 50, 100, 200), volts: oneOf(208, 230, 460, 480, 600) };

const motor: Relation = (row) => {
  const { power, volts } = row.cells.phases === 1 ? onePhase : threePhase;
  const horsepower = power(thrown(row, "power"));
  const inKilowatts = typeof row.cells.unit === "string" && row.cells.unit.trim().toLowerCase() === "kw";
  return { power: inKilowatts ? typed(0.746 * horsepower) : horsepower, volts: volts(thrown(row, "volts")) };
};

/** Trials of the first row's breaker: it trips by its own time constant, a little early or late, or holds below its pickup. */
const trial: Relation = (row) => {
  const { pickup, timeConstant } = row.first.scene;
  const multiple = either(
    logarithmic(1.08, 5),
    logarithmic(1.3, 3),
    logarithmic(1.1, 2),
    linear(0.7, 0.99),
  )(thrown(row, "currents"));
  const current = typed(pickup * multiple);
  const holds = multiple < 1 || thrown(row, "outcomes") > 0.9;
  const seconds = multiple > 1 ? timeConstant * Math.log(multiple ** 2 / (multiple ** 2 - 1)) : 3600;
  const late = Math.exp(0.3 * (thrown(row, "times") - 0.5));
  return {
    currents: current,
    times: typed(holds ? seconds / 2 : seconds * late),
    outcomes: holds ? "held" : "tripped",
    preloads: typed(pickup * 0.5 * thrown(row, "preloads")),
  };
};

const fitOf = ({ cells }: Row["first"]): Range | undefined =>
  [cells.fit, cells.characteristic].find((cell): cell is Range => isRange(cell) && cell[0]?.[0] === "pickup");

const againstFit: Relation = (row) => {
  const fit = fitOf(row.first);
  if (!fit) return {};
  const pickup = pickupOf(fit);
  return {
    current: typed(pickup * logarithmic(0.9, 6)(thrown(row, "current"))),
    preload: typed(pickup * 0.95 * thrown(row, "preload")),
  };
};

/** Every third start is asked of a fitted breaker, which takes no conditions but a preload. */
const start: Relation = (row) => {
  if (row.index > 0 || thrown(row, "startTime") > 0.33) return {};
  const characteristic = oneOf(...fitBlocks)(thrown(row, "characteristic"));
  const preload = typed(pickupOf(characteristic) * 0.9 * thrown(row, "preload"));
  return { characteristic, preload, ambient: undefined, setting: undefined, tripRise: undefined };
};

const partitions: Relation = ({ cells: { method, partitions } }) => ({
  partitions: typeof method === "string" && method.trim().toLowerCase().startsWith("iec") ? partitions : undefined,
});

export const relations: Readonly<Record<string, Relation>> = {
  "TRIP.STANDARD": (row) => ({ continuous: typed(number(row.cells.load) * thrown(row, "continuous")) }),
  "THERMAL.PROFILE": (row) => ({
    times: typed(row.index * logarithmic(1, 300)(row.first.dice.times ?? 0)),
    currents: typed(row.first.scene.pickup * linear(0, 2)(thrown(row, "currents"))),
  }),
  "THERMAL.FIT": trial,
  "THERMAL.FORECAST": againstFit,
  "THERMAL.HOLDS": againstFit,
  "CONTACT.TERMINAL": (row) => ({ temperature: number(row.cells.room) + linear(1, 75)(thrown(row, "temperature")) }),
  "INRUSH.MOTOR": motor,
  "INRUSH.MARGIN": start,
  "INRUSH.STARTS": (row) => ({
    period: typed(number(row.cells.startTime) * logarithmic(1.01, 100)(thrown(row, "period"))),
  }),
  "ENCLOSURE.RISE": partitions,
  "ENCLOSURE.DISSIPATES": partitions,
};
