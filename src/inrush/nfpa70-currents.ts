import type { Source } from "../metrology/source";
import { sayHorsepower } from "./horsepower";

// NFPA 70 (National Electrical Code), article 430: motors. The texts of 1999 and 2023 were compared for the currents.

const from = (place: string): Source => ({ document: "NFPA 70", edition: "2023", place, standing: "corroborated" });

const guard = "test/inrush/nfpa70.published.test.ts";

/** A row of a table of motor currents: the motor's power, hp, and its full-load current, A, in the order of the columns. */
interface MotorRow {
  readonly hp: number;
  readonly amperes: readonly (number | null)[];
}

/** Full-load currents by nominal motor voltage; null where the table has no entry. */
export interface MotorTable {
  readonly columns: readonly number[];
  readonly rows: readonly MotorRow[];
  readonly source: Source;
}

const row = (hp: number, ...amperes: readonly (number | null)[]): MotorRow => ({ hp, amperes });

/** A table as it is asked, and as it is printed. */
const motorTable = (
  printed: { title: string; place: string },
  columns: readonly number[],
  rows: readonly MotorRow[],
): MotorTable => ({
  columns,
  rows,
  source: {
    ...from(printed.place),
    tables: [
      {
        title: printed.title,
        columns: [["power", "hp"], ...columns.map((volts) => [`${volts} V`, "A"] as const)],
        rows: rows.map(({ hp, amperes }) => [sayHorsepower(hp), ...amperes]),
        guard,
      },
    ],
  },
});

export const singlePhase = motorTable(
  { title: "Full-load currents, single-phase motors of usual speed and torque", place: "Table 430.248" },
  [115, 200, 208, 230],
  [
    row(1 / 6, 4.4, 2.5, 2.4, 2.2),
    row(1 / 4, 5.8, 3.3, 3.2, 2.9),
    row(1 / 3, 7.2, 4.1, 4.0, 3.6),
    row(1 / 2, 9.8, 5.6, 5.4, 4.9),
    row(3 / 4, 13.8, 7.9, 7.6, 6.9),
    row(1, 16, 9.2, 8.8, 8),
    row(1.5, 20, 11.5, 11, 10),
    row(2, 24, 13.8, 13.2, 12),
    row(3, 34, 19.6, 18.7, 17),
    row(5, 56, 32.2, 30.8, 28),
    row(7.5, 80, 46, 44, 40),
    row(10, 100, 57.5, 55, 50),
  ],
);

export const threePhase = motorTable(
  { title: "Full-load currents, three-phase squirrel-cage and wound-rotor motors", place: "Table 430.250" },
  [115, 200, 208, 230, 460, 575],
  [
    row(1 / 2, 4.4, 2.5, 2.4, 2.2, 1.1, 0.9),
    row(3 / 4, 6.4, 3.7, 3.5, 3.2, 1.6, 1.3),
    row(1, 8.4, 4.8, 4.6, 4.2, 2.1, 1.7),
    row(1.5, 12, 6.9, 6.6, 6, 3, 2.4),
    row(2, 13.6, 7.8, 7.5, 6.8, 3.4, 2.7),
    row(3, null, 11, 10.6, 9.6, 4.8, 3.9),
    row(5, null, 17.5, 16.7, 15.2, 7.6, 6.1),
    row(7.5, null, 25.3, 24.2, 22, 11, 9),
    row(10, null, 32.2, 30.8, 28, 14, 11),
    row(15, null, 48.3, 46.2, 42, 21, 17),
    row(20, null, 62.1, 59.4, 54, 27, 22),
    row(25, null, 78.2, 74.8, 68, 34, 27),
    row(30, null, 92, 88, 80, 40, 32),
    row(40, null, 120, 114, 104, 52, 41),
    row(50, null, 150, 143, 130, 65, 52),
    row(60, null, 177, 169, 154, 77, 62),
    row(75, null, 221, 211, 192, 96, 77),
    row(100, null, 285, 273, 248, 124, 99),
    row(125, null, 359, 343, 312, 156, 125),
    row(150, null, 414, 396, 360, 180, 144),
    row(200, null, 552, 528, 480, 240, 192),
    row(250, null, null, null, null, 302, 242),
    row(300, null, null, null, null, 361, 289),
    row(350, null, null, null, null, 414, 336),
    row(400, null, null, null, null, 477, 382),
    row(450, null, null, null, null, 515, 412),
    row(500, null, null, null, null, 590, 472),
  ],
);

/** System voltages that a column of those tables stands for; 200 V and 208 V stand for themselves. */
export const systemVoltages: Readonly<Record<number, readonly [number, number]>> = {
  115: [110, 120],
  200: [200, 200],
  208: [208, 208],
  230: [220, 240],
  460: [440, 480],
  575: [550, 600],
};

export const systemVoltagesSource: Source = {
  ...from("Tables 430.248 and 430.250, system voltages"),
  tables: [
    {
      title: "System voltages of the columns",
      columns: [
        ["column", "V"],
        ["from", "V"],
        ["to", "V"],
      ],
      rows: Object.entries(systemVoltages).map(([column, [from, to]]) => [Number(column), from, to]),
      guard,
    },
  ],
};
