import { sayNumber } from "../metrology/say";
import { loneValues, type Source } from "../metrology/source";

const fractions: readonly (readonly [number, string])[] = [
  [1 / 6, "1/6"],
  [1 / 4, "1/4"],
  [1 / 3, "1/3"],
  [1 / 2, "1/2"],
  [3 / 4, "3/4"],
];

/** "1/6", "1 1/2", "10": as horsepower is written. */
export const sayHorsepower = (hp: number): string => {
  const whole = Math.floor(hp);
  const fraction = fractions.find(([part]) => Math.abs(hp - whole - part) < 1e-9)?.[1];
  if (fraction === undefined) return sayNumber(hp);
  return whole === 0 ? fraction : `${whole} ${fraction}`;
};

/** The rounded one that the code's tables go by. */
export const kilowattsPerHorsepower = 0.746;

export const horsepowerSource: Source = {
  document: "Mechanical horsepower",
  place: "rounded from 745.7 W",
  standing: "handbook",
  tables: [
    {
      title: "Horsepower",
      columns: loneValues,
      rows: [["one horsepower", kilowattsPerHorsepower, "kW"]],
      guard: "test/inrush/full-load.test.ts",
    },
  ],
};

export const horsepower = (kilowatts: number): number => kilowatts / kilowattsPerHorsepower;
