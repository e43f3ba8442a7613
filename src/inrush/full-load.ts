import { NoAnswer } from "../metrology/no-answer";
import { sayNumber } from "../metrology/say";
import { sayHorsepower } from "./horsepower";
import type { Phases } from "./line-current";
import { type MotorTable, singlePhase, systemVoltages, threePhase } from "./nfpa70-currents";

/** The current of a motor at full load as the code's tables give it, and the row and column it stands in. */
interface FullLoad {
  readonly amperes: number;
  readonly hp: number;
  readonly column: number;
}

/**
 * Ratings are rounded on nameplates: 0.33 for 1/3 hp, 1.1 kW for 1 1/2 hp. A row is meant by what lies so far above or below it;
 * 0.12, 0.18 and 90 kW lie 3.5 % below theirs, and its current is then on the large side. Rows lie 10 % apart or more.
 */
const near = { above: 0.02, below: 0.036 } as const;

const isMeant = (hp: number, power: number): boolean =>
  power <= hp * (1 + near.above) && power >= hp * (1 - near.below);

/** NFPA 70 table 430.248 or 430.250. */
export const motorTable = (phases: Phases): MotorTable => (phases === 1 ? singlePhase : threePhase);

/**
 * A, full load, of an a.c. motor by its power, hp, and the voltage of the system, V: NFPA 70 tables 430.248 and 430.250.
 * Throws NoAnswer between and outside the rows and columns: the tables are not to be interpolated.
 */
export const motorFullLoad = (motor: { power: number; volts: number; phases: Phases }): FullLoad => {
  const table = motorTable(motor.phases);
  const place = table.columns.findIndex((column) => stands(column, motor.volts));
  const column = table.columns[place];
  if (column === undefined) throw new NoAnswer(noColumn(table, motor.volts));
  const rows = table.rows.filter(({ amperes }) => amperes[place] !== null);
  const row = rows.find(({ hp }) => isMeant(hp, motor.power));
  const amperes = row?.amperes[place];
  if (row && typeof amperes === "number") return { amperes, hp: row.hp, column };
  throw new NoAnswer(
    noRow(
      rows.map(({ hp }) => hp),
      motor.power,
      `${table.source.place} at ${column} V`,
    ),
  );
};

const stands = (column: number, volts: number): boolean => {
  const [from, to] = systemVoltages[column] ?? [column, column];
  return volts >= from && volts <= to;
};

const noColumn = (table: MotorTable, volts: number): string => {
  const spans = table.columns.map((column) => {
    const [from, to] = systemVoltages[column] ?? [column, column];
    return from === to ? `${from}` : `${from}–${to}`;
  });
  return `volts: ${table.source.place} has columns for ${spans.join(", ")} V, and none for ${sayNumber(volts)} V; there the nameplate decides.`;
};

const noRow = (known: readonly number[], hp: number, table: string): string => {
  const below = known.filter((row) => row < hp).at(-1);
  const above = known.find((row) => row > hp);
  const given = `power: ${sayNumber(hp)} hp`;
  if (below === undefined) return `${given} is below the smallest row of ${table}, ${sayHorsepower(above ?? 0)} hp.`;
  if (above === undefined) return `${given} is above the largest row of ${table}, ${sayHorsepower(below)} hp.`;
  return `${given} lies between two rows of ${table}, ${sayHorsepower(below)} hp and ${sayHorsepower(above)} hp.`;
};
